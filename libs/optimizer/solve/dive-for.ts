import type { Decisions } from '#domain/plan.js';
import { withOpen } from '#mip/with-open.js';
import type { Random } from '#units/random.js';
import { NOTHING_COUNTED_OUT } from '../counts/count-columns.js';
import { dive, diveColumns } from '../dive/dive.js';
import { planModel, type HeldTiers } from '../model/plan-model.js';
import { readDecisions } from '../model/read-decisions.js';
import type { Board } from './board.js';
import { restricted } from './restricted.js';
import type { Relaxation } from './solve-tier.js';

/** Lives that a dive chooses from, those that cost the relaxation least. */
const DIVE_LIVES = 250;

/** Seconds of one solve in a dive at the most. */
const PATIENCE = 0.5;

/** Share of the bound by which chance may prefer one side of a fraction. */
const CHANCE = 0.001;

export interface DiveGoal {
  readonly relaxation: Relaxation;
  /** Tiers held in the relaxation. */
  readonly held: HeldTiers;
  readonly seconds: number;
  /** Left out: the dive goes by values alone. */
  readonly random?: Random;
}

/**
 * Decisions near a relaxation of benefit, made whole among the lives that cost it least. They need not
 * keep every rule. `undefined` where the dive came to nothing.
 */
export function diveFor(board: Board, of: DiveGoal): Decisions | undefined {
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
  const values = withOpen(board.on.solver, on, (lp) =>
    dive(lp, {
      ...diveColumns(made),
      sign: made.model.sense === 'maximize' ? 1 : -1,
      ...(of.random ? { random: of.random } : {}),
      chance: CHANCE * Math.abs(relaxation.bound),
      patience: PATIENCE,
      done: () => shouldStop() || around.elapsed() >= until,
    }),
  );
  return values && readDecisions(made.columns, values);
}
