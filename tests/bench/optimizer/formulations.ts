import type { Campus } from '#domain/campus.js';
import type { Decisions } from '#domain/plan.js';
import type { Model } from '#mip/model.js';
import type { Solver } from '#mip/solver.js';
import { groundOf } from '#optimizer/columns/ground-of.js';
import { planModel, type HeldTiers } from '#optimizer/model/plan-model.js';
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
 * What the peers are given. `plain` has the rules' rows and nothing of our search or proof. `tightened`
 * is what our own proof asks at its end: lives that no better plan can have are left out, by the reduced
 * costs of its relaxation and the benefit of our last plan.
 */
export const FORMULATIONS: Readonly<Record<string, Formulation>> = {
  plain: ({ campus, reached }) => planModel(groundOf(campus), 'benefit', reached.held).model,
  tightened,
};

function tightened({ campus, reached, solver, seconds }: Writing): Model | undefined {
  const { held, best } = reached;
  const tiers = tiersOf(campus);
  const tier = tiers[benefitPlace(tiers)];
  if (!best || !tier) return undefined;
  const ground = groundOf(campus);
  const question = { ground, solver, tier: tier.name, held, seed: 1, shouldStop: () => false };
  const relaxation = relaxTier({ ...question, limits: { seconds } });
  if (relaxation === null || relaxation === 'infeasible') return undefined;
  const kept = restricted(ground, { tier, relaxation, best, most: Infinity });
  return planModel(kept.ground, tier.name, held).model;
}
