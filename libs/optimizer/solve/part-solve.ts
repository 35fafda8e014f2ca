import { placementKey, type Decisions } from '#domain/plan.js';
import type { SolveLimits } from '#mip/solver.js';
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
    const held = board.held(place);
    const key = `${place}:${held.join(',')}`;
    const found = this.kept.get(key);
    if (found) return found;
    const tier = board.on.tiers[place]?.name ?? '';
    const made = relaxTier({ ...question(board, place), limits });
    if (made === 'infeasible') throw contradiction(tier);
    if (made === null) return undefined;
    this.kept.set(key, made);
    board.noteBound({ place, held, bound: made.bound });
    return made;
  }
}

export interface Part {
  readonly relaxation: Relaxation;
  /** Lives to choose from at the most. */
  readonly most: number;
  readonly limits: SolveLimits;
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
  const { ground, exact } = restricted(board.on.ground, { ...part, tier, best: own });
  const note = (bound: number | null) => {
    if (exact && bound !== null) board.noteBound({ place, held, bound });
  };
  const outcome = solveTier({
    ...question(board, place),
    ground,
    limits: part.limits,
    start: own.decisions,
    shouldStop: () => {
      board.hear();
      return board.shouldStop() || board.closeEnough(place) || !sameHeld(board, held);
    },
    newDecisions: news(
      board,
      held,
      ground.lifecycles.map((l) => placementKey(l.placement)),
    ),
    onBound: note,
    onDecisions: (decisions) => board.offer(decisions),
  });
  if (outcome.ended === 'infeasible') throw contradiction(tier.name);
  if (outcome.decisions) board.offer(outcome.decisions);
  note(outcome.bound);
  return { ...outcome, exact };
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

function sameHeld(board: Board, held: readonly number[]): boolean {
  return held.every((v, i) => v === board.best?.values[i]);
}

/** Tells each better plan that was found elsewhere once, where it can be told in the lives at hand. */
function news(board: Board, held: readonly number[], lives: readonly string[]) {
  const known = new Set(lives);
  let told = board.best;
  return (): Decisions | undefined => {
    board.hear();
    const { best } = board;
    if (!best || best === told || !sameHeld(board, held)) return undefined;
    told = best;
    const { decisions } = best.plan;
    return decisions.placements.every((p) => known.has(placementKey(p))) ? decisions : undefined;
  };
}

export function contradiction(tier: string): Error {
  return new Error(`the solver calls ${tier} infeasible while a verified plan is in hand`);
}
