import type { Campus } from '#domain/campus.js';
import type { Decisions, Plan } from '#domain/plan.js';
import type { Effort, ResolveAnswer, ResolveOrder, RunPlan } from '#optimizer/resolve/order.js';
import { benefitPlace, tiersOf } from '#optimizer/tiers/tier-list.js';
import { compareTiers } from '#optimizer/tiers/tier-values.js';
import type { Asked } from '../common/asked.js';
import type { Reached } from '../common/worse-by.js';
import type { Choice } from './choices.js';

/** What is known of one choice. */
export interface Contestant {
  readonly choice: Choice;
  readonly ending: ResolveAnswer['ending'];
  /** What its searches came to after each stage that it was in, by seed. */
  readonly stages: readonly (readonly RunPlan[])[];
  /** Rounds of search of all stages and seeds. */
  readonly rounds: number;
  /** The best plan of all stages. */
  readonly plan?: Plan;
  readonly reached: Reached;
}

/** One stage: equal work for all that are in it, from the same plan, with the same seeds. */
export interface Stage {
  readonly effort: Effort;
  readonly start: Decisions;
  readonly seeds: readonly number[];
}

/** Plans every choice again, going on from what each had found where that is better than the start. */
export async function runStage(
  asked: Asked,
  contestants: readonly Contestant[],
  of: { readonly stage: Stage; readonly onAnswer: () => void },
): Promise<Contestant[]> {
  const { stage, onAnswer } = of;
  const orders = contestants.map((c) => orderOf(c, stage));
  const answers = await asked.resolver.resolve(orders, onAnswer);
  return contestants.map((c, i) => withAnswer({ asked, effort: stage.effort }, c, answers[i]));
}

function orderOf(c: Contestant, { effort, start, seeds }: Stage): ResolveOrder {
  const before = c.stages.at(-1) ?? [];
  const runs = seeds.map((seed, i) => {
    const from = before[i] ?? before[0];
    return { seed, ...(from ? { from } : {}) };
  });
  return { campus: c.choice.campus, start, seed: seeds[0] ?? 1, runs, effort, wish: 'best' };
}

export function newcomer(choice: Choice): Contestant {
  const reached = { values: [], bounds: [] };
  return { choice, ending: 'not-found', stages: [], rounds: 0, reached };
}

interface Contest {
  readonly asked: Asked;
  readonly effort: Effort;
}

/** Takes up what a stage found; a choice that the time did not reach stays as it was. */
function withAnswer(of: Contest, c: Contestant, answer: ResolveAnswer | undefined): Contestant {
  if (!answer || (answer.ending === 'not-found' && c.plan)) return c;
  const { ending, plan, values } = answer;
  if (!plan) return { ...c, ending };
  const runs = answer.runs ?? [{ decisions: plan.decisions, values }];
  const isBetter = !c.plan || compareTiers(of.asked.campus, values, c.reached.values) < 0;
  const bounds = withOwn(of, answer.bounds, freeBounds(of, values));
  return {
    ...c,
    ending,
    stages: [...c.stages, runs],
    rounds: c.rounds + answer.rounds,
    ...(isBetter ? { plan, reached: { values, bounds } } : {}),
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

/** A choice is a restriction, so it can be no better than the plan that is free to choose. */
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
export function ranked(campus: Campus, all: readonly Contestant[]): Contestant[] {
  return [...all].sort((a, b) => {
    if (!a.plan || !b.plan) return Number(!a.plan) - Number(!b.plan);
    return compareTiers(campus, a.reached.values, b.reached.values);
  });
}

/** Bounds of their own for choices that are still tied, by the relaxation. */
export async function withBounds(asked: Asked, tied: readonly Contestant[]): Promise<Contestant[]> {
  const orders = tied.map((c): ResolveOrder => ({
    campus: c.choice.campus,
    ...(c.plan ? { start: c.plan.decisions } : {}),
    seed: asked.seed,
    effort: { kind: 'rounds', rounds: 0 },
    known: c.reached.bounds,
    wish: 'bound',
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
