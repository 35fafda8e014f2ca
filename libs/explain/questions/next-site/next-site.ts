import { seasonIndex } from '#domain/calendar.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import { siteName } from '../../overview/site-words.js';
import type { Asked } from '../common/asked.js';
import { fairEffort, madeBy } from '../common/fair-effort.js';
import type { ChoiceRow, CouldBecome, NextSiteAnswer } from './answer.js';
import { choiceFacts, type Facts } from './choice-facts.js';
import { choose, eligibleNextYear, type Choice } from './choices.js';
import {
  firstRound,
  MOST_NEAR,
  nearBest,
  otherSeeds,
  ranked,
  SEEDS,
  withBounds,
  type Contestant,
} from './contest.js';
import { barredByUnknowns, type Barred } from './could-become.js';
import { headlineOf } from './headline.js';
import { inOrder } from './order.js';
import { standsAgainst, type Stands } from './standing.js';

/** Re-solves beside one for each choice: the other seeds of those that are near, and pairs. */
const MORE_RESOLVES = (MOST_NEAR - 1) * (SEEDS - 1) + 1;

/** Share of the time left that may be planned for; the rest is for reading the plans. */
const SHARE = 0.7;

/** Which site next year, and why not the others: each is forced, planned again, and compared. */
export async function nextSite(asked: Asked): Promise<NextSiteAnswer> {
  const { campus } = asked;
  const barred = barredByUnknowns(asked);
  const singles = [[], ...eligibleNextYear(campus).map((id) => [id])].map((s) => choose(campus, s));
  const count = singles.length + MORE_RESOLVES + barred.length;
  const effort = await fairEffort(asked, { count, share: SHARE });
  const first = await firstRound(asked, singles, effort);
  const pair = pairOf(asked, first);
  const all = [...first, ...(pair ? await firstRound(asked, [pair], effort) : [])];
  const near = nearBest(asked, all);
  const seeded = replaced(all, await otherSeeds(asked, near, effort));
  const tied = nearBest(asked, seeded);
  const timeForBounds = asked.resolver.secondsLeft() > 0;
  const bounded = timeForBounds ? replaced(seeded, await withBounds(asked, tied, effort)) : seeded;
  const couldBecome = await passedSites(asked, { barred, best: ranked(asked, bounded)[0], effort });
  const skipped = [
    ...seedsMissing(near, bounded),
    ...(timeForBounds ? [] : ['bounds of the sites that are near each other']),
    ...notTried(bounded),
  ];
  return answerOf(asked, {
    contestants: ranked(asked, bounded),
    couldBecome,
    made: madeBy(effort, seedsRun(asked, bounded), skipped),
  });
}

/** The two best single sites together, where there are two. */
function pairOf(asked: Asked, first: readonly Contestant[]): Choice | undefined {
  const [a, b] = ranked(asked, first).filter((c) => c.plan && c.choice.sites.length === 1);
  return a && b ? choose(asked.campus, [...a.choice.sites, ...b.choice.sites]) : undefined;
}

function replaced(all: readonly Contestant[], by: readonly Contestant[]): Contestant[] {
  return all.map((c) => by.find((n) => n.choice.id === c.choice.id) ?? c);
}

function seedsRun({ seed }: Asked, all: readonly Contestant[]): number[] {
  const most = Math.max(1, ...all.map((c) => c.bySeed.length));
  return Array.from({ length: most }, (_, i) => seed + i);
}

function seedsMissing(near: readonly Contestant[], all: readonly Contestant[]): string[] {
  const missing = near.some((n) => {
    const now = all.find((c) => c.choice.id === n.choice.id);
    return (now?.bySeed.length ?? 0) < SEEDS && n.reached.bounds.length > 0;
  });
  return missing && near.length > 1 ? ['some of the other seeds'] : [];
}

function notTried(all: readonly Contestant[]): string[] {
  return all.filter((c) => c.ending === 'not-found').map((c) => `a plan with ${c.choice.id}`);
}

interface Passing {
  readonly barred: readonly Barred[];
  readonly best: Contestant | undefined;
  readonly effort: Parameters<typeof firstRound>[2];
}

async function passedSites(
  asked: Asked,
  { barred, best, effort }: Passing,
): Promise<CouldBecome[]> {
  const plain = (b: Barred): CouldBecome => ({
    site: b.site,
    name: siteName(asked.campus, b.site),
    findOut: b.findOut,
    ifPassed: null,
  });
  if (!best || asked.resolver.secondsLeft() <= 0) return barred.map(plain);
  const choices = barred.map((b) => choose(b.passed, [b.site]));
  // What was proven of the campus as it is does not hold where a gate is passed.
  const unbound = asked.tiers.map(() => null);
  const tried = await firstRound({ ...asked, onStep: () => undefined }, choices, effort);
  return barred.map((b, i) => {
    const own = tried[i];
    if (!own?.plan) return plain(b);
    const c = { ...own, reached: { ...own.reached, bounds: unbound } };
    const ahead = ranked(asked, [best, c])[0] === c;
    const { regret, sentence } = standsAgainst(asked.campus, best, c);
    const passed = ahead
      ? { sentence: 'If it passed, it was found better than the recommended one.', regret: null }
      : {
          sentence: `If it passed: ${sentence.charAt(0).toLowerCase()}${sentence.slice(1)}`,
          regret,
        };
    return { ...plain(b), ifPassed: passed };
  });
}

interface Found {
  readonly contestants: readonly Contestant[];
  readonly couldBecome: readonly CouldBecome[];
  readonly made: NextSiteAnswer['made'];
}

function answerOf(asked: Asked, { contestants, couldBecome, made }: Found): NextSiteAnswer {
  const { campus } = asked;
  const [best] = contestants;
  const factsOf = new Map(
    contestants.map((c) => [
      c.choice.id,
      c.plan ? choiceFacts(campus, c.plan, c.choice.sites) : undefined,
    ]),
  );
  const rows = contestants.map((c) =>
    rowOf(asked, c, {
      stands: standsAgainst(campus, best ?? c, c),
      facts: factsOf.get(c.choice.id),
      best: best && factsOf.get(best.choice.id),
    }),
  );
  const choices = inOrder(rows);
  const year = fiscalYearLabel(campus.calendar.firstYear);
  const gap = gapOf(asked, best);
  const headline = headlineOf(campus, { year, choices, couldBecome });
  return { question: 'next-site', year, headline, choices, couldBecome, gap, made };
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
  readonly facts: Facts | undefined;
  readonly best: Facts | undefined;
}

function rowOf(
  { campus }: Asked,
  { choice }: Contestant,
  { stands, facts, best }: RowParts,
): ChoiceRow {
  const kept = facts ?? NO_FACTS;
  const { lapses, firstLimitPlace, ...shown } = kept;
  const moves =
    facts && best && firstLimitPlace !== null && best.firstLimitPlace !== null
      ? Math.round((firstLimitPlace - best.firstLimitPlace) / seasonIndex(campus.calendar, 1, 0))
      : null;
  const name =
    choice.sites.length === 0
      ? 'No site'
      : choice.sites.map((id) => siteName(campus, id)).join(' and ');
  return {
    id: choice.id,
    name,
    sites: choice.sites,
    ...stands,
    ...shown,
    firstLimitMovesYears: moves,
    giftsLost: lapses.filter(
      (l) => !best?.lapses.some((b) => b.fund === l.fund && b.dollars >= l.dollars),
    ),
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
