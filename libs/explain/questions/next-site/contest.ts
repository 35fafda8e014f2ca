import type { Decisions, Plan } from '#domain/plan.js';
import type { Effort, ResolveAnswer, ResolveOrder } from '#optimizer/resolve/order.js';
import { benefitPlace, tiersOf } from '#optimizer/tiers/tier-list.js';
import { compareTiers } from '#optimizer/tiers/tier-values.js';
import type { Asked } from '../common/asked.js';
import { worseBy, type Reached } from '../common/worse-by.js';
import type { Choice } from './choices.js';

/** Seeds of the paired re-solves by which choices that are near each other are told apart. */
export const SEEDS = 5;

/** Benefit within this share of the best found makes a choice worth the other seeds. */
const NEAR = 0.05;

/** Most choices that get the other seeds and a bound of their own. */
export const MOST_NEAR = 4;

/** What is known of one choice. */
export interface Contestant {
  readonly choice: Choice;
  readonly ending: ResolveAnswer['ending'];
  /** Tier values by seed, in the order of the seeds. */
  readonly bySeed: readonly (readonly number[])[];
  /** The best plan of all seeds. */
  readonly plan?: Plan;
  readonly reached: Reached;
}

const seedsOf = (asked: Asked) => Array.from({ length: SEEDS }, (_, i) => asked.seed + i);

/** Plans each choice once, with the first seed. */
export async function firstRound(
  asked: Asked,
  choices: readonly Choice[],
  effort: Effort,
): Promise<Contestant[]> {
  let done = 0;
  const orders = choices.map((choice) => order(asked, choice, { effort, seed: asked.seed }));
  const answers = await asked.resolver.resolve(orders, () => {
    done += 1;
    asked.onStep?.('Trying each site in next year', (0.5 * done) / choices.length);
  });
  return choices.map((choice, i) => contestant({ asked, effort }, choice, answers[i]));
}

function order(
  { plan }: Asked,
  { campus }: Choice,
  { effort, seed }: { readonly effort: Effort; readonly seed: number },
): ResolveOrder {
  const start: Decisions = plan.decisions;
  return { campus, start, seed, effort, wish: 'best' };
}

interface Contest {
  readonly asked: Asked;
  readonly effort: Effort;
}

/** A choice is a restriction, so it can be no better than the plan that is free to choose. */
function contestant(of: Contest, choice: Choice, answer: ResolveAnswer | undefined): Contestant {
  const values = answer?.values ?? [];
  const bounds = withOwn(of, answer?.bounds ?? [], freeBounds(of, values));
  return {
    choice,
    ending: answer?.ending ?? 'not-found',
    bySeed: answer?.plan ? [values] : [],
    ...(answer?.plan ? { plan: answer.plan } : {}),
    reached: { values, bounds },
  };
}

/**
 * Bounds of the plan that is free to choose, as far as they hold beside these values: those of a tier
 * were found with the tiers before it as they are in that plan.
 */
function freeBounds({ asked: { tiers }, effort }: Contest, values: readonly number[]) {
  const parts = tiers.findIndex((t, i) => Math.abs(t.value - (values[i] ?? NaN)) > t.tolerance);
  const bounds = tiers.map((t, i) => (parts < 0 || i <= parts ? t.bound : null));
  const guide = effort.kind === 'rounds' ? effort.prices : undefined;
  const place = tiers.findIndex((t) => t.name === 'benefit');
  const holds = guide?.held.every((v, i) => v === values[i]) ?? false;
  if (!guide || !holds) return bounds;
  return bounds.map((b, i) => (i === place ? bestBound('max', guide.bound, b) : b));
}

function withOwn(
  { asked: { tiers } }: Contest,
  own: readonly (number | null)[],
  free: readonly (number | null)[],
): (number | null)[] {
  return tiers.map((tier, i) => bestBound(tier.sense, own[i], free[i] ?? null));
}

function bestBound(
  sense: 'min' | 'max',
  own: number | null | undefined,
  free: number | null,
): number | null {
  if (own === null || own === undefined) return free;
  if (free === null) return own;
  return sense === 'min' ? Math.max(own, free) : Math.min(own, free);
}

/** The best found first; those without a plan last. */
export function ranked(asked: Asked, all: readonly Contestant[]): Contestant[] {
  return [...all].sort((a, b) => {
    if (!a.plan || !b.plan) return Number(!a.plan) - Number(!b.plan);
    return compareTiers(asked.campus, a.reached.values, b.reached.values);
  });
}

/** Those near the best found, the best among them: equal before benefit, and near in it. */
export function nearBest(asked: Asked, all: readonly Contestant[]): Contestant[] {
  const order = ranked(asked, all).filter((c) => c.plan);
  const [best] = order;
  if (!best) return [];
  return order
    .filter((c) => {
      const { tier, shares } = worseBy(asked.campus, best.reached, c.reached);
      return tier === 'benefit' && (shares?.found ?? 0) <= NEAR;
    })
    .slice(0, MOST_NEAR);
}

/**
 * The other seeds for some choices, each from the plan that its first seed found: paired, since all of
 * them run with the same seeds and work.
 */
export async function otherSeeds(
  asked: Asked,
  near: readonly Contestant[],
  effort: Effort,
): Promise<Contestant[]> {
  if (effort.kind === 'proven') return [...near];
  const seeds = seedsOf(asked).slice(1);
  const orders = seeds.flatMap((seed) =>
    near.map((c) => ({
      ...order(asked, c.choice, { effort, seed }),
      ...(c.plan ? { start: c.plan.decisions } : {}),
    })),
  );
  let done = 0;
  const answers = await asked.resolver.resolve(orders, () => {
    done += 1;
    asked.onStep?.('Comparing those near each other', 0.5 + (0.4 * done) / orders.length);
  });
  return near.map((c, place) => {
    const own = seeds.map((_, s) => answers[s * near.length + place]);
    const complete = own.filter((a) => a?.plan !== undefined);
    return complete.reduce<Contestant>(
      (merged, a) => (a ? withSeed({ asked, effort }, merged, a) : merged),
      c,
    );
  });
}

function withSeed(of: Contest, c: Contestant, { plan, values }: ResolveAnswer): Contestant {
  const bySeed = [...c.bySeed, values];
  const better = compareTiers(of.asked.campus, values, c.reached.values) < 0;
  if (!better || !plan) return { ...c, bySeed };
  return { ...c, bySeed, plan, reached: { values, bounds: freeBounds(of, values) } };
}

/** Bounds of their own for choices that are still tied, by the relaxation. */
export async function withBounds(
  asked: Asked,
  tied: readonly Contestant[],
  effort: Effort,
): Promise<Contestant[]> {
  if (effort.kind === 'proven') return [...tied];
  const orders = tied.map((c) => ({
    ...order(asked, c.choice, { effort, seed: asked.seed }),
    ...(c.plan ? { start: c.plan.decisions } : {}),
    known: c.reached.bounds,
    wish: 'bound' as const,
  }));
  const answers = await asked.resolver.resolve(orders);
  const upTo = benefitPlace(tiersOf(asked.campus));
  return tied.map((c, i) => {
    const own = answers[i]?.bounds ?? [];
    const bounds = asked.tiers.map((tier, place) =>
      place <= upTo ? bestBound(tier.sense, own[place], c.reached.bounds[place] ?? null) : null,
    );
    return { ...c, reached: { ...c.reached, bounds } };
  });
}
