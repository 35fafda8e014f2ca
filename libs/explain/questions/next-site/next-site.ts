import { seasonIndex } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { compareTiers } from '#optimizer/tiers/tier-values.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import { listInWords } from '#units/in-words.js';
import { siteName } from '../../overview/site-words.js';
import type { Asked } from '../common/asked.js';
import type { ChoiceRow, CouldBecome, NextSiteAnswer } from './answer.js';
import { choiceFacts, type Facts } from './choice-facts.js';
import { choiceName, choose, eligibleNextYear, firstOpenYear } from './choices.js';
import { ranked, withBounds, type Contestant } from './contest.js';
import { barredByUnknowns, type Barred } from './could-become.js';
import { headlineOf } from './headline.js';
import { madeOf } from './made.js';
import { inOrder } from './order.js';
import { contest, type Contested } from './stages.js';
import { bestOf, standsAgainst, type Compared, type Stands } from './standing.js';

/** Share of the time left that bounds of tied choices may take. */
const BOUNDS_SHARE = 0.6;

/** Which site next year, and why not the others: each is forced, planned again, and compared. */
export async function nextSite(asked: Asked): Promise<NextSiteAnswer> {
  const { campus } = asked;
  const barred = barredByUnknowns(asked);
  const singles = [[], ...eligibleNextYear(campus).map((id) => [id])].map((s) => choose(campus, s));
  if (singles.length === 1 && barred.length === 0) return nothingToChoose(campus);
  const contested = await contest(asked, singles);
  const passed = await contested.alsoTry(barred.map((b) => choose(b.passed, [b.site])));
  const { compared, bounded } = await boundTied(asked, contested);
  const couldBecome = barred.map((b, i) => passedSite(compared, b, passed[i]));
  const skipped = [
    ...(bounded ? [] : ['bounds of the sites that are near each other']),
    ...notTried(compared),
    ...(couldBecome.some((c) => c.ifPassed === null)
      ? ['plans with some of the sites that need a test']
      : []),
  ];
  return answerOf(asked, { compared, couldBecome, made: madeOf(asked, contested, skipped) });
}

function nothingToChoose(campus: Campus): NextSiteAnswer {
  const sentence = 'The rules alone answer this; nothing was planned again.';
  const year = fiscalYearLabel(campus.calendar.firstYear);
  const made = { rounds: null, seeds: [], skipped: [], sentence };
  const open = { year, firstOpenYear: firstOpenYear(campus) };
  const told = { ...open, choices: [], couldBecome: [], made };
  return { question: 'next-site', ...told, headline: headlineOf(campus, told), gap: null };
}

/** Bounds of their own for those that cannot be told apart, where there is time for all of them. */
async function boundTied(
  asked: Asked,
  { contestants, noise, relaxationSeconds, isProven }: Contested,
): Promise<{ readonly compared: Compared; readonly bounded: boolean }> {
  const compared = { campus: asked.campus, all: contestants, noise };
  const tied = contestants.filter((c) =>
    ['recommended', 'tied'].includes(standsAgainst(compared, c).standing),
  );
  const left = asked.resolver.secondsLeft() * BOUNDS_SHARE;
  if (isProven || tied.length < 2) return { compared, bounded: true };
  if ((tied.length * relaxationSeconds) / asked.resolver.parallel > left)
    return { compared, bounded: false };
  const own = await withBounds(asked, tied);
  const by = new Map(own.map((c) => [c.choice.id, c]));
  const all = contestants.map((c) => by.get(c.choice.id) ?? c);
  return { compared: { ...compared, all }, bounded: true };
}

function notTried({ campus, all }: Compared): string[] {
  const left = all.filter((c) => c.ending === 'not-found').map((c) => choiceName(campus, c.choice));
  return left.length === 0 ? [] : [`a plan with ${listInWords(left)}`];
}

/** Where a site that a test bars would stand, by the work of the first stage. */
function passedSite(
  compared: Compared,
  { site, findOut }: Barred,
  own: Contestant | undefined,
): CouldBecome {
  const { campus } = compared;
  const plain = { site, name: siteName(campus, site), findOut, ifPassed: null };
  const best = bestOf(compared);
  if (!best || !own?.plan) return plain;
  // What was proven of the campus as it is does not hold where a gate is passed.
  const bounds = own.reached.values.map(() => null);
  const c = { ...own, reached: { ...own.reached, bounds } };
  const first = best.stages[0] ?? [];
  if (first.every((run) => compareTiers(campus, c.reached.values, run.values) < 0)) {
    const sentence = 'If it passed, it was found better than the best found with as much search.';
    return { ...plain, ifPassed: { sentence, regret: null } };
  }
  const { regret, sentence } = standsAgainst({ ...compared, all: [...compared.all, c] }, c);
  const told = `If it passed: ${sentence.charAt(0).toLowerCase()}${sentence.slice(1)}`;
  return { ...plain, ifPassed: { sentence: told, regret } };
}

interface Found {
  readonly compared: Compared;
  readonly couldBecome: readonly CouldBecome[];
  readonly made: NextSiteAnswer['made'];
}

function answerOf(asked: Asked, { compared, couldBecome, made }: Found): NextSiteAnswer {
  const { campus } = asked;
  const contestants = ranked(campus, compared.all);
  const best = bestOf(compared);
  const factsOf = new Map(
    contestants.map((c) => [
      c.choice.id,
      c.plan ? choiceFacts(campus, c.plan, c.choice.sites) : NO_FACTS,
    ]),
  );
  const least = leastLapses([...factsOf.values()].filter((f) => f !== NO_FACTS));
  const rows = contestants.map((c) =>
    rowOf(asked, c, {
      stands: standsAgainst(compared, c),
      facts: factsOf.get(c.choice.id) ?? NO_FACTS,
      least,
    }),
  );
  const choices = withMoves(campus, inOrder(rows), factsOf);
  const year = fiscalYearLabel(campus.calendar.firstYear);
  const gap = gapOf(asked, best);
  const told = { year, firstOpenYear: firstOpenYear(campus), choices, couldBecome, made };
  return { question: 'next-site', ...told, headline: headlineOf(campus, told), gap };
}

/** Given money by fund that lapses whatever is chosen. */
function leastLapses(all: readonly Facts[]): ReadonlyMap<string, number> {
  const funds = new Set(all.flatMap(({ lapses }) => lapses.map(({ fund }) => fund)));
  const lapsed = ({ lapses }: Facts, fund: string) =>
    lapses.find((l) => l.fund === fund)?.dollars ?? 0;
  return new Map([...funds].map((fund) => [fund, Math.min(...all.map((f) => lapsed(f, fund)))]));
}

/** Years by which the first limit moves against the recommended choice. */
function withMoves(
  { calendar }: Campus,
  rows: readonly ChoiceRow[],
  factsOf: ReadonlyMap<string, Facts>,
): ChoiceRow[] {
  const placeOf = ({ id }: ChoiceRow) => factsOf.get(id)?.firstLimitPlace ?? null;
  const [recommended] = rows;
  const from = recommended ? placeOf(recommended) : null;
  return rows.map((row) => {
    const place = placeOf(row);
    if (from === null || place === null) return row;
    const firstLimitMovesYears = Math.round((place - from) / seasonIndex(calendar, 1, 0));
    return { ...row, firstLimitMovesYears };
  });
}

/** Share by which the best found may fall short in benefit, its earlier tiers being what they are. */
function gapOf({ tiers }: Asked, best: Contestant | undefined): number | null {
  const place = tiers.findIndex((t) => t.name === 'benefit');
  const value = best?.reached.values[place];
  const bound = best?.reached.bounds[place] ?? null;
  return value === undefined || bound === null ? null : (bound - value) / Math.max(1, value);
}

interface RowParts {
  readonly stands: Stands;
  readonly facts: Facts;
  readonly least: ReadonlyMap<string, number>;
}

function rowOf(
  { campus }: Asked,
  { choice, rounds }: Contestant,
  { stands, facts, least }: RowParts,
): ChoiceRow {
  const { lapses, firstLimitPlace: _, ...shown } = facts;
  return {
    id: choice.id,
    name: choiceName(campus, choice),
    sites: choice.sites,
    rounds,
    ...stands,
    ...shown,
    firstLimitMovesYears: null,
    giftsLost: lapses
      .map((l) => ({ ...l, dollars: l.dollars - (least.get(l.fund) ?? 0) }))
      .filter(({ dollars }) => dollars > 0),
  };
}

const NO_FACTS: Facts = {
  buildTypes: [],
  firstLimit: null,
  firstLimitPlace: null,
  busySeason: '',
  busySeasonHours: 0,
  cost: null,
  giftsUsed: [],
  openGates: [],
  reasons: [],
  against: [],
  lapses: [],
};
