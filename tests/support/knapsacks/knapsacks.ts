import { readFileSync } from 'node:fs';
import type { Model } from '#mip/model.js';
import { ModelDraft } from '#mip/model-draft.js';

/** Choose items for the most profit so that no resource is overspent. */
export interface Knapsack {
  readonly name: string;
  readonly profits: readonly number[];
  /** What each item takes, resource by resource. */
  readonly constraints: readonly (readonly number[])[];
  readonly capacities: readonly number[];
}

export interface PublishedKnapsack extends Knapsack {
  /** Optimum in whole items. */
  readonly published: number;
  /** Optimum in fractions of items. */
  readonly relaxation: number;
}

function dataOf(file: string): unknown {
  return JSON.parse(readFileSync(new URL(file, import.meta.url), 'utf8'));
}

/** Problems of the OR-Library; the source stands in the file. */
export const OR_LIBRARY = (
  dataOf('or-library.json') as { readonly problems: readonly PublishedKnapsack[] }
).problems;

interface LorieSavage {
  readonly npv: readonly number[];
  readonly outlay1: readonly number[];
  readonly outlay2: readonly number[];
  readonly budgets: readonly number[];
  readonly lp_optimum: number;
  readonly lp_budget_duals: readonly number[];
  readonly ip_optimum: number;
  readonly ip_selection: readonly number[];
}

/** Nine projects with outlays in two years (Lorie and Savage 1955). */
export const LORIE_SAVAGE = dataOf('lorie-savage-1955.json') as LorieSavage;

export const LORIE_SAVAGE_KNAPSACK: PublishedKnapsack = {
  name: 'Lorie-Savage',
  profits: LORIE_SAVAGE.npv,
  constraints: [LORIE_SAVAGE.outlay1, LORIE_SAVAGE.outlay2],
  capacities: LORIE_SAVAGE.budgets,
  published: LORIE_SAVAGE.ip_optimum,
  relaxation: LORIE_SAVAGE.lp_optimum,
};

export function knapsackModel({ profits, constraints, capacities }: Knapsack): Model {
  const draft = new ModelDraft();
  const items = profits.map((_, i) =>
    draft.addVariable({ label: `item ${i + 1}`, kind: 'binary' }),
  );
  const terms = (coefficients: readonly number[]) =>
    items.map((variable, i) => ({ variable, coefficient: coefficients[i] ?? 0 }));
  constraints.forEach((takes, r) =>
    draft.addRow({ label: `resource ${r + 1}`, terms: terms(takes), atMost: capacities[r] ?? 0 }),
  );
  return draft.build('maximize', terms(profits));
}
