import { readFileSync } from 'node:fs';
import type { Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { planOverview } from '#explain/overview/compute-overview.js';
import { completePlan } from '#optimizer/allocate/complete-plan.js';
import { possibleLifecycles } from '#optimizer/columns/lifecycles.js';
import { construct, RECIPES } from '#optimizer/construct/construct.js';
import { decisionsOf } from '#optimizer/search/state.js';
import { tablesOf } from '#optimizer/search/tables.js';
import { documentSource, type DocumentSource } from '#planning/documents/document-source.js';
import { loadCampusFile } from '#planning/load-campus-file.js';

const REPORT = { ending: 'work-limit', tiers: [], conflict: [] } as const;

/** What documents of a campus file are made from, with the first plan that can be put together. */
export function constructedSource(file: unknown): DocumentSource {
  const load = loadCampusFile(file);
  if (!load.ok) throw new Error(JSON.stringify(load.problems, null, 1));
  const { campus } = load;
  const charges = campusCharges(campus);
  const lifecycles = possibleLifecycles(campus, charges);
  const tables = tablesOf({ campus, charges, lifecycles });
  const state = RECIPES.map((recipe) => construct(tables, recipe)).find((one) => one !== undefined);
  if (!state) throw new Error(`no plan of ${campus.name} was constructed`);
  return sourceOf(campus, completePlan(campus, decisionsOf(state), charges).plan);
}

export function sourceOf(campus: Campus, plan: Plan): DocumentSource {
  return documentSource({ campus, plan, overview: planOverview(campus, plan, REPORT) });
}

/** The demo of a state, as `constructedSource`. */
export function demoSource(name: 'strained' | 'healthy'): DocumentSource {
  return constructedSource(readFileSync(`seeds/demo-${name}.json`, 'utf8'));
}
