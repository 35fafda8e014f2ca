import type { Campus } from '#domain/campus.js';
import type { Decisions } from '#domain/plan.js';
import type { Model } from '#mip/model.js';
import type { Solver } from '#mip/solver.js';
import { groundOf } from '#optimizer/columns/ground-of.js';
import { planModel, type HeldTiers } from '#optimizer/model/plan-model.js';
import { Board } from '#optimizer/solve/board.js';
import { boundByCounts } from '#optimizer/solve/bound-by-counts.js';
import { question } from '#optimizer/solve/part-solve.js';
import { quietSurroundings } from '#optimizer/solve/quiet-surroundings.js';
import { restricted } from '#optimizer/solve/restricted.js';
import { relaxTier } from '#optimizer/solve/solve-tier.js';
import { benefitPlace, tiersOf } from '#optimizer/tiers/tier-list.js';

/** What ours came to on a campus: what the models of the peers are written from. */
export interface Reached {
  /** Tiers before benefit, by name. */
  readonly held: HeldTiers;
  /** The last plan, and its benefit; left out where none was found. */
  readonly best?: { readonly decisions: Decisions; readonly value: number };
}

export interface Writing {
  readonly campus: Campus;
  readonly reached: Reached;
  readonly solver: Solver;
  /** Seconds that writing one model may take. */
  readonly seconds: number;
}

/** A way to write the benefit tier, the tiers before it held; `undefined` where it cannot be written. */
export type Formulation = (of: Writing) => Model | undefined;

/**
 * What the peers are given. `plain` has the rules' rows and nothing of our search or proof. `tightened` is
 * what our own proof asks: counts stand beside the decisions with the most that they come to in a better
 * plan than our last, and lives that no such plan can have are left out.
 */
export const FORMULATIONS: Readonly<Record<string, Formulation>> = {
  plain: ({ campus, reached }) => planModel(groundOf(campus), 'benefit', reached.held).model,
  tightened,
};

/** Nodes of the tree over counts: none, since it is to be the peers who branch. */
const ROOT_ONLY = 0;

function tightened({ campus, reached, solver, seconds }: Writing): Model | undefined {
  const { held, best } = reached;
  const tiers = tiersOf(campus);
  const place = benefitPlace(tiers);
  const tier = tiers[place];
  if (!best || !tier) return undefined;
  const began = performance.now();
  const around = quietSurroundings(() => (performance.now() - began) / 1000);
  const ground = groundOf(campus);
  const board = new Board({ ground, tiers, solver }, { settings: { seed: 1 }, around });
  board.offer(best.decisions);
  const found = boundByCounts(board, place, { seconds, nodes: ROOT_ONLY });
  // Where the root alone proves our plan, there is nothing to count.
  const relaxation = found ?? relaxTier({ ...question(board, place), limits: { seconds } });
  if (relaxation === null || relaxation === 'infeasible') return undefined;
  const kept = restricted(ground, { tier, relaxation, best, most: Infinity });
  const counted = relaxation.counted && { ...relaxation.counted, kinds: 'all' as const };
  return planModel({ ...kept.ground, ...(counted ? { counted } : {}) }, tier.name, held).model;
}
