import type { Decisions } from '#domain/plan.js';
import type { Effort } from '#optimizer/resolve/order.js';
import { compareTiers } from '#optimizer/tiers/tier-values.js';
import type { Asked } from '../common/asked.js';
import type { Pace } from '../common/pace.js';
import { choose, type Choice } from './choices.js';
import { newcomer, ranked, runStage, type Contestant, type Stage } from './contest.js';
import { isNear, standsAgainst, type Compared } from './standing.js';

/** Seeds of the paired re-solves by which choices that are near each other are told apart. */
export const SEEDS = 5;

/** Most choices that are still compared in each stage after the first. */
const MOST_IN = [8, 5];

/** Shares of the time left for each stage. */
const STAGE_SHARES = [0.36, 0.5, 0.62] as const;

/** Share of the time left that prices may take. */
const PRICES_SHARE = 0.3;

/** Searches for a better common plan, their rounds, and the share of the time left that they may take. */
const COMMON_SEARCHES = 4;
const COMMON_ROUNDS = 100;
const COMMON_SHARE = 0.25;

/** Fewest and most rounds of each search of a stage, and how many where nobody waits. */
const LEAST_ROUNDS = 4;
const MOST_ROUNDS = 400;
const UNTIMED_ROUNDS = 100;

/** Reading a found plan through takes about this share of what comes before the first round. */
const JUDGE_SHARE = 0.4;

/** Keeps the seeds of one stage apart from those of the others. */
const SEED_STEP = 1000;

export interface Contested {
  readonly contestants: readonly Contestant[];
  /** By how much searches of the campus as it is differ, tier by tier. */
  readonly noise: readonly number[];
  /** Puts other choices into the start of the first stage, with the work of that stage. */
  readonly alsoTry: (choices: readonly Choice[]) => Promise<Contestant[]>;
  /** Seconds of one relaxation; 0 where nobody waits. */
  readonly relaxationSeconds: number;
  readonly isProven: boolean;
}

/**
 * Compares choices by stages (successive halving, Karnin, Koren and Somekh 2013): all of them once, then
 * with five seeds those that may still be best. Before each stage the best plan that any choice has led
 * to becomes the start of all, with each choice put into it, so that what differs in the end is the
 * choice and not who was lucky in the other years.
 */
export async function contest(asked: Asked, singles: readonly Choice[]): Promise<Contested> {
  const means = await meansOf(asked);
  const count = singles.length + 1;
  const effort = means.effortFor({ share: STAGE_SHARES[0], count, runs: 1 });
  const opening: Stage = { effort, start: means.common, seeds: [asked.seed] };
  const tryAll = (choices: readonly Choice[], onAnswer: () => void) =>
    runStage(asked, choices.map(newcomer), { stage: opening, onAnswer });
  const own = await tryAll(
    singles,
    steps(asked, 'Trying each site in next year', { from: 0.1, to: 0.45, of: count }),
  );
  const pair = pairOf(asked, own);
  const paired = pair ? await tryAll([pair], () => undefined) : [];
  const contestants = await closerStages(asked, [...own, ...paired], means);
  return {
    contestants,
    noise: means.noise,
    alsoTry: (choices) => tryAll(choices, () => undefined),
    relaxationSeconds: means.relaxationSeconds,
    isProven: means.proven,
  };
}

async function closerStages(
  asked: Asked,
  opened: readonly Contestant[],
  means: Means,
): Promise<readonly Contestant[]> {
  let all = opened;
  for (const [i, most] of MOST_IN.entries()) {
    const field = stillOpen({ campus: asked.campus, all, noise: means.noise }, most);
    const time = asked.resolver.secondsLeft() > 0;
    if (field.length < 2 || !time || means.proven) break;
    const share = STAGE_SHARES[i + 1] ?? 1;
    const effort = means.effortFor({ share, count: field.length, runs: SEEDS });
    const start = ranked(asked.campus, all)[0]?.plan?.decisions ?? means.common;
    const seeds = seedsOf(asked).map((seed) => seed + (i + 1) * SEED_STEP);
    const span = { from: 0.45 + 0.25 * i, to: 0.7 + 0.25 * i, of: field.length };
    const onAnswer = steps(asked, 'Comparing those near each other', span);
    const done = await runStage(asked, field, { stage: { effort, start, seeds }, onAnswer });
    all = all.map((c) => done.find((d) => d.choice.id === c.choice.id) ?? c);
  }
  return all;
}

/** Those of the last stage that may still be best. */
function stillOpen({ campus, all, noise }: Compared, most: number): Contestant[] {
  const stages = Math.max(0, ...all.map((c) => c.stages.length));
  const last = all.filter((c) => c.plan && c.stages.length === stages);
  const of = { campus, all: last, noise };
  const isOpen = (c: Contestant) =>
    stages === 1 ? isNear(of, c) : ['recommended', 'tied'].includes(standsAgainst(of, c).standing);
  return ranked(campus, last.filter(isOpen)).slice(0, most);
}

const seedsOf = (asked: Asked) => Array.from({ length: SEEDS }, (_, i) => asked.seed + i);

/** The two best single sites together, where there are two. */
function pairOf(asked: Asked, first: readonly Contestant[]): Choice | undefined {
  const [a, b] = ranked(asked.campus, first).filter((c) => c.plan && c.choice.sites.length === 1);
  return a && b ? choose(asked.campus, [...a.choice.sites, ...b.choice.sites]) : undefined;
}

function steps(
  asked: Asked,
  step: string,
  { from, to, of }: { readonly from: number; readonly to: number; readonly of: number },
): () => void {
  let done = 0;
  return () => {
    done += 1;
    asked.onStep?.(step, from + ((to - from) * done) / Math.max(1, of));
  };
}

interface Means {
  readonly proven: boolean;
  /** The plan that is asked about, searched on: a common start on which little can be gained. */
  readonly common: Decisions;
  readonly noise: readonly number[];
  readonly relaxationSeconds: number;
  /** Rounds of each run for `count` re-solves of `runs` searches that use a share of the time left. */
  readonly effortFor: (of: {
    readonly share: number;
    readonly count: number;
    readonly runs: number;
  }) => Effort;
}

/** Prices that lead all searches, the common plan, and by it how fast searches go. */
async function meansOf(asked: Asked): Promise<Means> {
  const { effort, resolver, plan } = asked;
  if (effort !== 'timed' && effort.kind === 'proven')
    return {
      ...{ proven: true, common: plan.decisions, noise: [] },
      ...{ relaxationSeconds: 0, effortFor: () => effort },
    };
  asked.onStep?.('Working on the common plan', 0.02);
  const { common, noise, pace, guide } = await commonPlan(asked);
  const timed = effort === 'timed' && Number.isFinite(resolver.secondsLeft());
  const set = effort === 'timed' ? UNTIMED_ROUNDS : effort.rounds;
  return {
    ...{ proven: false, common, noise },
    ...{ relaxationSeconds: timed ? pace.relaxation : 0 },
    effortFor: ({ share, count, runs }) => {
      const each = (resolver.secondsLeft() * share * resolver.parallel) / Math.max(1, count);
      const rounds = timed ? roundsWithin(pace, each, runs) : set;
      return { kind: 'rounds', rounds, ...guide };
    },
  };
}

function roundsWithin({ round, setUp }: Pace, seconds: number, runs: number): number {
  const left = seconds - setUp * (1 + JUDGE_SHARE * runs);
  return Math.max(LEAST_ROUNDS, Math.min(MOST_ROUNDS, Math.floor(left / (runs * round))));
}

interface Common {
  readonly common: Decisions;
  readonly noise: readonly number[];
  readonly pace: Pace;
  readonly guide: Pick<Extract<Effort, { kind: 'rounds' }>, 'prices'>;
}

async function commonPlan({ campus, plan, tiers, resolver, seed, effort }: Asked): Promise<Common> {
  const order = { campus, start: plan.decisions, seed };
  const none = { kind: 'rounds', rounds: 0 } as const;
  // Without prices the search goes on as well, but without time no choice is tried at all.
  const timeFor = (share: number) => {
    const seconds = resolver.secondsLeft() * share;
    return Number.isFinite(seconds) ? { seconds } : {};
  };
  const pricing = { ...order, effort: none, wish: 'prices' as const, ...timeFor(PRICES_SHARE) };
  const [priced] = await resolver.resolve([pricing]);
  const guide = priced?.prices ? { prices: priced.prices } : {};
  const rounds = effort === 'timed' || effort.kind === 'proven' ? COMMON_ROUNDS : effort.rounds;
  const each = timeFor((COMMON_SHARE * resolver.parallel) / COMMON_SEARCHES);
  const search = { ...order, effort: { kind: 'rounds' as const, rounds, ...guide } };
  const searches = Array.from({ length: COMMON_SEARCHES }, (_, i) => ({
    ...{ ...search, seed: seed + i, wish: 'best' as const },
    ...each,
  }));
  // The last one has no rounds and comes when the threads have warmed up: it tells what a set-up takes.
  const bare = { ...order, effort: none, wish: 'best' as const };
  const answers = await resolver.resolve([...searches, bare]);
  const setUp = answers.at(-1)?.seconds ?? 0;
  const found = answers.filter((a) => a.plan);
  const [best] = found.sort((a, b) => compareTiers(campus, a.values, b.values));
  const paces = found
    .filter((a) => a.rounds > 0)
    .map((a) => (a.seconds - setUp) / a.rounds)
    .sort((a, b) => a - b);
  const round = Math.max(0.001, paces[Math.floor(paces.length / 2)] ?? 0.01);
  const pace = { round, setUp, relaxation: priced?.seconds ?? 0 };
  const reached = [tiers.map(({ value }) => value), ...found.map(({ values }) => values)];
  const noise = tiers.map((_, i) => {
    const of = reached.map((values) => values[i] ?? 0);
    return Math.max(...of) - Math.min(...of);
  });
  return { common: best?.plan?.decisions ?? plan.decisions, noise, pace, guide };
}
