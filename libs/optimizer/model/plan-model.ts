import type { Campus } from '#domain/campus.js';
import type { Model, Sense, Term } from '#mip/model.js';
import { ModelDraft } from '#mip/model-draft.js';
import { addBuiltOnceRows } from '#rules/built-once/rows.js';
import type { Columns } from '#rules/columns.js';
import { addCommitmentRows } from '#rules/commitment-rows.js';
import { addCompostRows } from '#rules/compost/rows.js';
import { addExclusiveGroupRows } from '#rules/exclusive-group/rows.js';
import { addFundRows } from '#rules/funds/rows.js';
import { addHandPlacementRows } from '#rules/hand-placements/columns.js';
import { addLaborRows } from '#rules/labor/rows.js';
import { addPositionRows } from '#rules/positions/rows.js';
import { addPrecedenceRows } from '#rules/precedence/rows.js';
import { addReserveFloorRows } from '#rules/reserve-floor/rows.js';
import { addFrozenRows, changeTerms } from '#rules/stability/columns.js';
import { addCounts, type CountColumn } from '../counts/count-columns.js';
import { addColumns, type Ground } from '../columns/add-columns.js';
import { tiersOf, type Tier } from '../tiers/tier-list.js';
import type { ModelParts } from './model-parts.js';
import { benefitTerms, recurringPeak, unservedPeak } from './tier-terms.js';

/**
 * Tiers already decided, held at their values while a later one is improved; by tier name. The tier
 * that is improved may be among them: then only points that reach its value are asked for.
 */
export type HeldTiers = ReadonlyMap<string, number>;

/** A model of a campus with the columns it stands for. */
export interface PlanModel {
  readonly model: Model;
  readonly columns: Columns;
  /** Where the ground asks for counts. */
  readonly counts: readonly CountColumn[];
}

/**
 * The model of one tier: every rule's rows, the tiers before it held, this one as the objective.
 * A table of contents; the order of the rules has no effect.
 */
export function planModel(ground: Ground, tier: string, held: HeldTiers): PlanModel {
  const draft = new ModelDraft();
  const columns = addColumns(draft, ground);
  addBuiltOnceRows(draft, columns);
  addHandPlacementRows(draft, columns);
  addFrozenRows(draft, columns);
  addPrecedenceRows(draft, columns);
  addExclusiveGroupRows(draft, columns);
  addPositionRows(draft, columns);
  addCompostRows(draft, columns);
  addFundRows(draft, columns);
  addReserveFloorRows(draft, ground.campus);
  const unserved = addLaborRows(
    draft,
    columns,
    held.get('unserved-total') === 0 ? 'none' : 'allowed',
  );
  const counts = ground.counted ? addCounts(draft, columns, ground.counted) : [];
  const parts = { draft, columns, unserved };
  addBindingCommitments(parts);
  const terms = addTiers(parts, tier, held);
  return { model: draft.build(senseOf(ground.campus, tier), terms), columns, counts };
}

function addBindingCommitments({ draft, columns, unserved }: ModelParts): void {
  for (const { test } of columns.campus.commitments.filter((c) => c.strength === 'binding')) {
    addCommitmentRows(draft, columns, { test, slack: 'none', unserved });
  }
}

function senseOf(campus: Campus, name: string): Sense {
  const tier = tiersOf(campus).find((t) => t.name === name);
  if (!tier) throw new RangeError(`no tier called ${name} for ${campus.name}`);
  return tier.sense === 'max' ? 'maximize' : 'minimize';
}

/** Writes the rows that hold earlier tiers and returns the terms of this one. */
function addTiers(parts: ModelParts, name: string, held: HeldTiers): Term[] {
  const { draft, columns } = parts;
  for (const tier of tiersOf(columns.campus)) {
    const value = held.get(tier.name);
    if (tier.name !== name && value === undefined) continue;
    const terms = tierTerms(parts, tier.name, value === 0 ? 'none' : 'allowed');
    if (value !== undefined && terms.length > 0) holdAt(draft, { tier, terms, value });
    if (tier.name === name) return terms;
  }
  throw new RangeError(`no tier called ${name}`);
}

interface Hold {
  readonly tier: Tier;
  readonly terms: readonly Term[];
  readonly value: number;
}

function holdAt(draft: ModelDraft, { tier, terms, value }: Hold): void {
  const limit =
    tier.sense === 'max' ? { atLeast: value - tier.tolerance } : { atMost: value + tier.tolerance };
  draft.addRow({ label: `held ${tier.name}`, terms, ...limit });
}

function tierTerms(parts: ModelParts, name: string, slack: 'allowed' | 'none'): Term[] {
  const { draft, columns, unserved } = parts;
  switch (name) {
    case 'unserved-peak':
      return unservedPeak(draft, unserved);
    case 'unserved-total':
      return unserved.map(({ variable }) => ({ variable, coefficient: 1 }));
    case 'benefit':
      return benefitTerms(parts);
    case 'recurring-cost':
      return recurringPeak(draft, columns);
    case 'change':
      return changeTerms(draft, columns);
  }
  const commitment = columns.campus.commitments.find((c) => name === `commitment:${c.id}`);
  if (!commitment) throw new RangeError(`no tier called ${name}`);
  return addCommitmentRows(draft, columns, { test: commitment.test, slack, unserved });
}
