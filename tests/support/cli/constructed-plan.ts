import { planFileOf } from '#apps/adapters/solved-plan.js';
import { writePlanFile, type PlanFile } from '#contracts/plan-file.js';
import type { Campus } from '#domain/campus.js';
import type { Decisions } from '#domain/plan.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { possibleLifecycles } from '#optimizer/columns/lifecycles.js';
import { construct, RECIPES } from '#optimizer/construct/construct.js';
import { decisionsOf } from '#optimizer/search/state.js';
import { tablesOf } from '#optimizer/search/tables.js';
import { judgeDecisions } from '#optimizer/solve/incumbent.js';
import { tierResult } from '#optimizer/solve/tier-report.js';
import { tiersOf } from '#optimizer/tiers/tier-list.js';
import { loadCampusFile } from '#planning/load-campus-file.js';

/** The plan file of the first plan that can be put together without a solver. */
export function constructedPlanFile(campusText: string): PlanFile {
  const { campus } = loaded(campusText);
  const charges = campusCharges(campus);
  const tables = tablesOf({ campus, charges, lifecycles: possibleLifecycles(campus, charges) });
  for (const recipe of RECIPES) {
    const state = construct(tables, recipe);
    if (state) return planFileOfDecisions(campusText, () => decisionsOf(state));
  }
  throw new Error('no recipe makes a plan of this campus');
}

/** The plan file of decisions that keep every rule. */
export function planFileOfDecisions(
  campusText: string,
  decide: (campus: Campus) => Decisions,
): PlanFile {
  const { campus, file: document } = loaded(campusText);
  const judged = judgeDecisions(campus, decide(campus), campusCharges(campus));
  if (judged.objections.length > 0) throw new Error(judged.objections.join('; '));
  const { plan, values } = judged.incumbent;
  const tiers = tiersOf(campus).map((tier, i) => tierResult(tier, values[i] ?? 0, null));
  const file = planFileOf(
    { campus, document, settings: { seed: 1, work: 1 } },
    {
      plan,
      report: { ending: 'work-limit', tiers, conflict: [] },
      solverName: 'construction',
      solverVersion: '1',
    },
  );
  if (!file) throw new Error('a solve with a plan has a plan file');
  return JSON.parse(writePlanFile(file)) as PlanFile;
}

function loaded(campusText: string) {
  const load = loadCampusFile(campusText);
  if (!load.ok) throw new Error(load.problems.map((p) => `${p.record}: ${p.problem}`).join('\n'));
  return load;
}
