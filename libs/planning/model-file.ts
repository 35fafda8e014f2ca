import type { Campus } from '#domain/campus.js';
import type { TierResult } from '#domain/tier.js';
import { writeLp } from '#mip/write-lp.js';
import { writeMps } from '#mip/write-mps.js';
import { campusModel } from '#optimizer/model/campus-model.js';
import { tiersOf } from '#optimizer/tiers/tier-list.js';

export const MODEL_FORMATS = ['mps', 'lp'] as const;
export type ModelFormat = (typeof MODEL_FORMATS)[number];

/** Tiers of a campus by name, in the order in which plans are judged by them. */
export function tierNames(campus: Campus): string[] {
  return tiersOf(campus).map(({ name }) => name);
}

export interface ModelWish {
  /** The tier that is the objective. */
  readonly tier: string;
  readonly format: ModelFormat;
  /** What a plan reaches: the tiers before are held there. Left out: nothing is held. */
  readonly reached?: readonly TierResult[];
}

/** The mathematical model of one tier of a campus as the text of a file, for other solvers. */
export function modelFile(campus: Campus, { tier, format, reached = [] }: ModelWish): string {
  const tiers = tierNames(campus);
  const before = new Set(tiers.slice(0, tiers.indexOf(tier)));
  const held = reached.filter(({ name }) => before.has(name));
  const { model } = campusModel(campus, tier, new Map(held.map((t) => [t.name, t.value])));
  return format === 'mps' ? writeMps(model) : writeLp(model);
}
