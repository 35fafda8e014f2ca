import type { Decisions } from '#domain/plan.js';
import { withOpen } from '#mip/with-open.js';
import type { Lifecycle } from '#rules/columns.js';
import type { Random } from '#units/random.js';
import { NOTHING_COUNTED_OUT } from '../counts/count-columns.js';
import { dive, diveColumns } from '../dive/dive.js';
import { planModel, type HeldTiers } from '../model/plan-model.js';
import { readDecisions } from '../model/read-decisions.js';
import type { Board } from './board.js';
import { peopleOf } from '../improve/near-people.js';
import { restricted } from './restricted.js';
import type { Relaxation } from './solve-tier.js';

/** Lives that a dive chooses from, those that cost the relaxation least. */
const DIVE_LIVES = 250;

/** Seconds of one solve in a dive at the most. */
const PATIENCE = 0.5;

export interface DiveGoal {
  readonly relaxation: Relaxation;
  /** Tiers held in the relaxation. */
  readonly held: HeldTiers;
  readonly seconds: number;
  /** Left out: the dive goes by values alone. */
  readonly random?: Random;
}

export interface FoundByDive {
  readonly decisions: Decisions;
  /** The relaxation once people are whole: what lives cost it then, and what share of them it takes. */
  readonly relaxation: Relaxation;
}

/**
 * Decisions near a relaxation of benefit, made whole among the lives that cost it least. They need not
 * keep every rule. `undefined` where the dive came to nothing.
 */
export function diveFor(board: Board, of: DiveGoal): FoundByDive | undefined {
  const { benefit, best } = board;
  const tier = board.on.tiers[benefit];
  if (!tier || !best) return undefined;
  const { relaxation } = of;
  const { ground } = restricted(board.on.ground, {
    tier,
    relaxation,
    best: { decisions: best.plan.decisions, value: -Infinity },
    most: DIVE_LIVES,
  });
  const counted = relaxation.counted ?? NOTHING_COUNTED_OUT;
  const made = planModel({ ...ground, counted }, tier.name, of.held);
  const { around, settings } = board.run;
  const until = around.elapsed() + of.seconds;
  const shouldStop = () => board.shouldStop();
  const on = { model: made.model, seed: settings.seed, changing: 'bounds', shouldStop } as const;
  const sign = made.model.sense === 'maximize' ? 1 : -1;
  const found = withOpen(board.on.solver, on, (lp) =>
    dive(lp, {
      ...diveColumns(made),
      sign,
      ...(of.random ? { random: of.random } : {}),
      surePeople: peopleOf(made, best.plan.decisions),
      patience: PATIENCE,
      done: () => shouldStop() || around.elapsed() >= until,
    }),
  );
  if (!found) return undefined;
  const { gains, values } = found.settled;
  const costOf = new Map(relaxation.costOf);
  const valueOf = new Map<Lifecycle, number>();
  made.columns.lifecycles.forEach(({ variable: { column } }, i) => {
    const life = ground.lifecycles[i];
    if (!life) return;
    costOf.set(life, Math.max(0, -(gains[column] ?? 0)));
    valueOf.set(life, values[column] ?? 0);
  });
  return {
    decisions: readDecisions(made.columns, found.values),
    relaxation: { ...relaxation, costOf, valueOf },
  };
}
