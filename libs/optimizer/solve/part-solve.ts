import { placementKey, type Decisions } from '#domain/plan.js';
import type { SolveLimits } from '#mip/solver.js';
import type { Lifecycle } from '#rules/columns.js';
import { NOTHING_COUNTED_OUT } from '../counts/count-columns.js';
import { nearPeople } from '../improve/near-people.js';
import type { HeldTiers } from '../model/plan-model.js';
import type { Tier } from '../tiers/tier-list.js';
import type { Board } from './board.js';
import { restricted } from './restricted.js';
import { relaxTier, solveTier, type Relaxation, type TierOutcome } from './solve-tier.js';

/** Relaxes a tier, notes the bound, and keeps the result for as long as the tiers before stay as they are. */
export class Relaxations {
  private readonly kept = new Map<string, Relaxation>();

  constructor(private readonly board: Board) {}

  /** `undefined` where it was stopped before its end. */
  of(place: number, limits: SolveLimits): Relaxation | undefined {
    const { board } = this;
    const found = this.kept.get(board.question(place));
    if (found) return found;
    const tier = board.on.tiers[place]?.name ?? '';
    const made = relaxTier({ ...question(board, place), limits });
    if (made === 'infeasible') throw contradiction(tier);
    if (made === null) return undefined;
    this.keep(place, made);
    return made;
  }

  /** The same with the tiers before kept in full, which needs no plan yet; `undefined` also where that cannot be. */
  ahead(place: number, limits: SolveLimits): Relaxation | undefined {
    const { board } = this;
    const held = board.keptInFull(place);
    const asked = { ...question(board, place), held: board.heldTiers(place, held) };
    const made = relaxTier({ ...asked, limits });
    if (made === null || made === 'infeasible') return undefined;
    this.keep(place, made, held);
    return made;
  }

  /** Keeps a relaxation that admits all that the tier admits with the tiers before held at some values. */
  keep(place: number, relaxation: Relaxation, held = this.board.held(place)): void {
    const { board } = this;
    this.kept.set(board.question(place, held), relaxation);
    board.noteBound({ place, held, bound: relaxation.bound });
  }
}

export interface Part {
  readonly relaxation: Relaxation;
  /** Lives to choose from at the most. */
  readonly most: number;
  readonly limits: SolveLimits;
  /** By how many people each year may differ from the best plan. Left out: as many as it takes. */
  readonly slack?: number;
  /** Lives to choose from, beside those of the best plan. Left out: all. */
  readonly among?: ReadonlySet<Lifecycle>;
}

export interface PartOutcome extends TierOutcome {
  /** Whether no better plan was left out. */
  readonly exact: boolean;
}

/**
 * Solves a tier among the lives that its relaxation finds cheapest. What it finds is offered to the
 * board; its bound is noted where nothing better was left out. Stops where the tier is close enough, or
 * where an earlier tier has changed meanwhile.
 */
export function solvePart(board: Board, place: number, part: Part): PartOutcome {
  const tier = board.on.tiers[place];
  const best = board.best;
  if (!tier || !best) throw new Error('a part is solved only from a plan');
  const held = board.held(place);
  const own = { decisions: best.plan.decisions, value: best.values[place] ?? 0 };
  const { slack } = part;
  const isNear = slack !== undefined;
  const counted = part.relaxation.counted ?? (isNear ? NOTHING_COUNTED_OUT : undefined);
  const left = restricted(board.on.ground, { ...part, tier, best: own });
  const exact = left.exact && !isNear;
  const ground = counted ? { ...left.ground, counted } : left.ground;
  const note = (bound: number | null) => {
    if (exact && bound !== null) board.noteBound({ place, held, bound });
  };
  const asked = question(board, place);
  const better = exact && own.value === 1 ? oneBetter(tier, own.value) : undefined;
  const outcome = solveTier({
    ...asked,
    ground,
    limits: part.limits,
    ...(better === undefined
      ? { start: own.decisions }
      : { held: new Map([...asked.held, [tier.name, better]]) }),
    ...(isNear ? { narrow: (made) => nearPeople(made, own.decisions, slack) } : {}),
    shouldStop: () => board.isOver(place, held),
    newDecisions: news(
      board,
      held,
      ground.lifecycles.map((l) => placementKey(l.placement)),
    ),
    onBound: note,
    onDecisions: (decisions) => board.offer(decisions),
  });
  if (outcome.ended === 'infeasible') {
    // Limits of counts admit better plans only, and maybe not the one at hand, which rounds its hours.
    if (better === undefined && !counted) throw contradiction(tier.name);
    note(own.value);
    return { ...outcome, exact };
  }
  if (outcome.decisions) board.offer(outcome.decisions);
  note(outcome.bound);
  return { ...outcome, exact };
}

/** The benefit model in which a tier before benefit is one better than the best plan has it. */
export interface Reach {
  readonly held: HeldTiers;
  readonly relaxation: Relaxation;
}

/** How far a tier is to be brought at once: to its bound, or to one better than it is. */
export type ReachGoal = 'bound' | 'one-better';

/**
 * Relaxes benefit with a tier that counts sites held at a better value than the best plan has it: its
 * prices lead a search there. Where one better is impossible, the tier is proven. `undefined`: no such
 * question, or no such plan.
 */
export function reachFor(
  board: Board,
  place: number,
  of: { readonly goal: ReachGoal; readonly limits: SolveLimits },
): Reach | undefined {
  const tier = board.on.tiers[place];
  const value = board.best?.values[place];
  const better = tier && value !== undefined ? oneBetter(tier, value) : undefined;
  if (!tier || value === undefined || better === undefined) return undefined;
  const bound = board.bounds.of(place, board.best?.values ?? []) ?? 0;
  if (of.goal === 'bound' && bound >= better) return undefined;
  const goal = of.goal === 'bound' ? bound : better;
  const held = new Map([...board.heldTiers(place), [tier.name, goal]]);
  const relaxation = relaxTier({ ...question(board, board.benefit), held, limits: of.limits });
  if (relaxation === 'infeasible') {
    if (goal === better) board.noteBound({ place, held: board.held(place), bound: value });
    return undefined;
  }
  return relaxation === null ? undefined : { held, relaxation };
}

/** Looks for a plan that is one better, among the lives that cost least there. */
export function solveReach(board: Board, place: number, of: Part & Reach): void {
  const held = board.held(place);
  const value = board.best?.values[place];
  const tier = board.on.tiers[board.benefit];
  const decisions = board.best?.plan.decisions;
  if (!tier || !decisions) return;
  const best = { decisions, value: -Infinity };
  const { ground } = restricted(board.on.ground, { ...of, tier, best });
  solveTier({
    ...question(board, board.benefit),
    ground,
    held: of.held,
    limits: of.limits,
    shouldStop: () => board.isOver(place, held) || board.best?.values[place] !== value,
    onBound: () => undefined,
    onDecisions: (found) => board.offer(found),
  });
}

/** The question of a tier, its earlier tiers held at the best plan's values. */
export function question(board: Board, place: number) {
  const { ground, solver, tiers } = board.on;
  return {
    ground,
    solver,
    tier: tiers[place]?.name ?? '',
    held: board.heldTiers(place),
    seed: board.run.settings.seed,
    shouldStop: () => board.shouldStop(),
  };
}

/**
 * The next better value of a tier that counts sites. Where that is none at all, asking for it outright,
 * and not for the least value, lets the solver rule out much more before it branches.
 */
export function oneBetter(tier: Tier, value: number): number | undefined {
  return tier.commitment && tier.unit === 'sites' && value >= 1 ? value - 1 : undefined;
}

/** Tells each better plan that was found elsewhere once, where it can be told in the lives at hand. */
function news(board: Board, held: readonly number[], lives: readonly string[]) {
  const known = new Set(lives);
  let told = board.best;
  return (): Decisions | undefined => {
    board.hear();
    const { best } = board;
    if (!best || best === told || !board.holds(held)) return undefined;
    told = best;
    const { decisions } = best.plan;
    return decisions.placements.every((p) => known.has(placementKey(p))) ? decisions : undefined;
  };
}

function contradiction(tier: string): Error {
  return new Error(`the solver calls ${tier} infeasible while a verified plan is in hand`);
}
