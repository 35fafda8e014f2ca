import type { Campus } from '#domain/campus.js';
import type { RunPlan } from '#optimizer/resolve/order.js';
import { benefitPlace, tiersOf } from '#optimizer/tiers/tier-list.js';
import { compareTiers } from '#optimizer/tiers/tier-values.js';
import { percentInWords } from '#units/in-words.js';
import { aimInWords, amountOfTier } from '../../overview/tier-words.js';
import { worseBy, type WorseBy } from '../common/worse-by.js';
import type { ChoiceRow, Standing } from './answer.js';
import { choiceName } from './choices.js';
import type { Contestant } from './contest.js';

export type Stands = Pick<
  ChoiceRow,
  'standing' | 'sentence' | 'regret' | 'comparedWith' | 'seedsWorse' | 'seedsRun'
>;

/** Benefit within this share of the best found makes a choice worth the other seeds. */
const NEAR = 0.03;

/** All that are compared, and by how much searches of one and the same campus differ, tier by tier. */
export interface Compared {
  readonly campus: Campus;
  readonly all: readonly Contestant[];
  readonly noise: readonly number[];
}

/** The best found of all; `undefined` where no choice has a plan. */
export function bestOf({ campus, all }: Compared): Contestant | undefined {
  return top(campus, all);
}

function top(campus: Campus, all: readonly Contestant[]): Contestant | undefined {
  return all
    .filter((c) => c.plan)
    .sort((a, b) => compareTiers(campus, a.reached.values, b.reached.values))[0];
}

/** Whether a choice may be as good as the best, by one seed each. */
export function isNear(of: Compared, c: Contestant): boolean {
  const rival = rivalOf(of, c);
  if (!rival) return true;
  const { found, shares, tier } = worseBy(of.campus, rival.reached, c.reached);
  return (shares !== null && shares.found <= NEAR) || found <= noiseOf(of, tier);
}

function noiseOf({ campus, noise }: Compared, tier: string): number {
  return noise[tiersOf(campus).findIndex((t) => t.name === tier)] ?? 0;
}

/**
 * With whom a choice is compared: with the best, where it falls behind that one by more than chance in a
 * tier before benefit, or is the best of its own there; else with the best of those that are equal to it
 * in the tiers before benefit, since the rest of the difference is chance.
 */
function rivalOf(of: Compared, c: Contestant): Contestant | undefined {
  const best = bestOf(of);
  if (!best || best === c) return undefined;
  const { found, tier } = worseBy(of.campus, best.reached, c.reached);
  if (tier === 'benefit' || found > noiseOf(of, tier)) return best;
  const own = top(
    of.campus,
    of.all.filter((o) => o.plan && isLevel(of.campus, o, c) && o.stages.length >= c.stages.length),
  );
  return own === undefined || own === c ? best : own;
}

function isLevel(campus: Campus, a: Contestant, b: Contestant): boolean {
  const place = benefitPlace(tiersOf(campus));
  return a.reached.values.slice(0, place).every((value, i) => value === b.reached.values[i]);
}

/** Where a choice stands against the best found: by equal work, in the last stage that it was in. */
export function standsAgainst(of: Compared, c: Contestant): Stands {
  const { campus } = of;
  const runs = c.stages.at(-1) ?? [];
  const none = { regret: null, comparedWith: null, seedsWorse: 0, seedsRun: runs.length };
  if (c.ending === 'impossible')
    return { ...none, standing: 'impossible', sentence: 'Proven: no plan has this next year.' };
  if (!c.plan)
    return {
      ...none,
      standing: 'not-found',
      sentence: 'No plan with it was found, and none was ruled out.',
    };
  const rival = rivalOf(of, c);
  if (!rival) return { ...none, standing: 'recommended', sentence: 'The best of those found.' };
  const others = rival.stages[c.stages.length - 1] ?? [];
  const pairs = Math.min(runs.length, others.length);
  const seedsWorse = runs
    .slice(0, pairs)
    .filter((run, i) => compareTiers(campus, others[i]?.values ?? [], run.values) < 0).length;
  const regret = regretOf(campus, { rival, c, others });
  const seeds = [others, runs].map((some) => spread(campus, some, regret.tier));
  const unsettled = Math.max(chanceIn(of, regret.tier, pairs), ...seeds);
  const isBest = rival === bestOf(of);
  const counts = { regret, seedsWorse, seedsRun: pairs, unsettled, rival: isBest ? null : rival };
  const standing = standingOf(counts);
  const sentence = sentenceOf(campus, standing, counts);
  const comparedWith = rival.choice.id;
  return { regret, comparedWith, seedsWorse, seedsRun: pairs, standing, sentence };
}

/**
 * By how much searches of one campus differ in a tier. Chance in benefit is told by the seeds of the
 * choices themselves where there are several; one seed alone says nothing of it.
 */
function chanceIn(of: Compared, tier: string, seedsRun: number): number {
  return tier === 'benefit' && seedsRun > 1 ? 0 : noiseOf(of, tier);
}

/** Proven by the best plans of all; else as found with equal work. */
function regretOf(
  campus: Campus,
  of: { readonly rival: Contestant; readonly c: Contestant; readonly others: readonly RunPlan[] },
): WorseBy {
  const { rival, c, others } = of;
  const overall = worseBy(campus, rival.reached, c.reached);
  const [first] = [...others].sort((a, b) => compareTiers(campus, a.values, b.values));
  if (overall.least > 0 || !first) return overall;
  return worseBy(campus, { values: first.values, bounds: rival.reached.bounds }, c.reached);
}

interface Counts {
  readonly regret: WorseBy;
  readonly seedsWorse: number;
  readonly seedsRun: number;
  /** By how much searches of one and the same choice differ in the tier of the regret. */
  readonly unsettled: number;
  /** With whom it is compared, where that is not the best found. */
  readonly rival: Contestant | null;
}

/** By how much the seeds of one choice differ in a tier, among those that are as good as its best in the tiers before. */
function spread(campus: Campus, runs: readonly RunPlan[], tier: string): number {
  const place = tiersOf(campus).findIndex((t) => t.name === tier);
  const [first] = [...runs].sort((a, b) => compareTiers(campus, a.values, b.values));
  if (!first) return 0;
  const alike = runs.filter(({ values }) =>
    values.slice(0, place).every((value, i) => value === first.values[i]),
  );
  const reached = alike.map(({ values }) => values[place] ?? 0);
  return Math.max(...reached) - Math.min(...reached);
}

function isUnsettled({ regret: { found }, unsettled }: Counts): boolean {
  return found > 0 && found <= unsettled;
}

function standingOf(counts: Counts): Standing {
  const { regret, seedsWorse, seedsRun } = counts;
  const { least, most, found } = regret;
  if (least > 0) return 'worse';
  if ((found === 0 && most === 0) || isUnsettled(counts)) return 'tied';
  return seedsRun > 0 && seedsWorse === seedsRun && found > 0 ? 'found-worse' : 'tied';
}

function sentenceOf(campus: Campus, standing: Standing, counts: Counts): string {
  const { regret, seedsWorse, seedsRun, rival } = counts;
  const by = amountInWords(campus, regret);
  const range = rangeInWords(regret);
  const beside = rival === null ? '' : ` beside ${choiceName(campus, rival.choice)}`;
  if (standing === 'worse') return `Worse${beside}, proven: ${by}${range}.`;
  if (standing === 'found-worse') {
    const runs = seedsRun === 1 ? 'in the only search' : `in ${seedsWorse} of ${seedsRun} searches`;
    return `Found worse${beside} ${runs}, not proven: ${by}${range}.`;
  }
  const apart = 'Cannot be told apart from the best found';
  if (regret.found === 0) return `${apart}: nothing differs in the plans found${range}.`;
  if (isUnsettled(counts)) {
    return `${apart}: its plans have ${by}${beside}, no more than searches of one choice differ among themselves${range}.`;
  }
  return `${apart}: worse in ${seedsWorse} of ${seedsRun} searches${range}.`;
}

/** `shortfall of “One site a year” greater by 1 site`, `0.8% less benefit`. */
export function amountInWords(campus: Campus, { tier, unit, found, shares }: WorseBy): string {
  if (shares) return `${percentInWords(shares.found)} less benefit`;
  return `a ${aimInWords(campus, tier)} greater by ${amountOfTier(unit, found)}`;
}

function rangeInWords({ least, most, unit, shares }: WorseBy): string {
  if (most === null) return '; how much it is at most is not known';
  const [low, high] =
    shares && shares.most !== null
      ? [percentInWords(shares.least), `${percentInWords(shares.most)} of benefit`]
      : [amountOfTier(unit, least), amountOfTier(unit, most)];
  if (least === most) return ', neither more nor less';
  if (least === 0) return `; the difference is ${high} at the most`;
  return `; the difference lies between ${low} and ${high}`;
}
