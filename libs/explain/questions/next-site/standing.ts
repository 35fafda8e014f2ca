import type { Campus } from '#domain/campus.js';
import { tiersOf } from '#optimizer/tiers/tier-list.js';
import { compareTiers } from '#optimizer/tiers/tier-values.js';
import { percentInWords } from '#units/in-words.js';
import { aimInWords, amountOfTier } from '../../overview/tier-words.js';
import { worseBy, type WorseBy } from '../common/worse-by.js';
import type { ChoiceRow, Standing } from './answer.js';
import type { Contestant } from './contest.js';

export type Stands = Pick<
  ChoiceRow,
  'standing' | 'sentence' | 'regret' | 'seedsWorse' | 'seedsRun'
>;

/** Where a choice stands against the best found. */
export function standsAgainst(campus: Campus, best: Contestant, c: Contestant): Stands {
  const none = { regret: null, seedsWorse: 0, seedsRun: c.bySeed.length };
  if (c.ending === 'impossible')
    return { ...none, standing: 'impossible', sentence: 'Proven: no plan has this next year.' };
  if (!c.plan)
    return {
      ...none,
      standing: 'not-found',
      sentence: 'No plan with it was found, and none was ruled out.',
    };
  if (c === best) return { ...none, standing: 'recommended', sentence: 'The best of those found.' };
  const regret = worseBy(campus, best.reached, c.reached);
  const pairs = c.bySeed.slice(0, best.bySeed.length);
  const seedsWorse = pairs.filter(
    (values, seed) => compareTiers(campus, best.bySeed[seed] ?? [], values) < 0,
  ).length;
  const shown = { regret, seedsWorse, seedsRun: pairs.length };
  const counts = {
    ...shown,
    unsettled: Math.max(...[best, c].map((of) => unsettled(campus, of, regret.tier))),
  };
  const standing = standingOf(counts);
  return { ...shown, standing, sentence: sentenceOf(campus, standing, counts) };
}

interface Counts {
  readonly regret: WorseBy;
  readonly seedsWorse: number;
  readonly seedsRun: number;
  /** What searches after the first still gained in the tier of the regret. */
  readonly unsettled: number;
}

/** What the other seeds gained over the first in the tier that tells two apart: a search is no surer than that. */
function unsettled(campus: Campus, { reached, bySeed }: Contestant, tier: string): number {
  const place = tiersOf(campus).findIndex((t) => t.name === tier);
  const first = bySeed[0] ?? [];
  if (first.slice(0, place).some((value, i) => value !== reached.values[i])) return 0;
  return Math.abs((reached.values[place] ?? 0) - (first[place] ?? 0));
}

function isUnsettled({ regret: { found }, unsettled: gained }: Counts): boolean {
  return found > 0 && found <= gained;
}

function standingOf(counts: Counts): Standing {
  const { regret, seedsWorse, seedsRun } = counts;
  const { least, most, found } = regret;
  if (least > 0) return 'worse';
  if ((found === 0 && most === 0) || isUnsettled(counts)) return 'tied';
  return seedsRun > 0 && seedsWorse === seedsRun && found > 0 ? 'found-worse' : 'tied';
}

function sentenceOf(campus: Campus, standing: Standing, counts: Counts): string {
  const { regret, seedsWorse, seedsRun } = counts;
  const by = amountInWords(campus, regret);
  const range = rangeInWords(regret);
  if (standing === 'worse') return `Worse, proven: ${by}${range}.`;
  if (standing === 'found-worse') {
    const seeds = seedsRun === 1 ? 'in the one seed run' : `in ${seedsWorse} of ${seedsRun} seeds`;
    return `Found worse ${seeds}, not proven: ${by}${range}.`;
  }
  if (regret.found === 0)
    return `Cannot be told apart: nothing differs in the plans found${range}.`;
  if (isUnsettled(counts))
    return `Cannot be told apart: ${by} in the plans found, no more than further search still gains${range}.`;
  return `Cannot be told apart: worse in ${seedsWorse} of ${seedsRun} seeds${range}.`;
}

/** `shortfall of “One site a year” greater by 1 site`, `0.8% less benefit`. */
export function amountInWords(campus: Campus, { tier, unit, found, shares }: WorseBy): string {
  if (shares) return `${percentInWords(shares.found)} less benefit`;
  return `${aimInWords(campus, tier)} greater by ${amountOfTier(unit, found)}`;
}

function rangeInWords({ least, most, unit, shares }: WorseBy): string {
  const inWords = (amount: number) => amountOfTier(unit, amount);
  if (most === null) return '; how much it is at most is not known';
  return shares && shares.most !== null
    ? `; the difference lies between ${percentInWords(shares.least)} and ${percentInWords(shares.most)} of benefit`
    : `; the difference lies between ${inWords(least)} and ${inWords(most)}`;
}
