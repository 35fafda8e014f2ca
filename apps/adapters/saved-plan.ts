import { toPlacement } from '#contracts/conversion/lives.js';
import { parsePlanFile, toPlan, type PlanFile } from '#contracts/plan-file.js';
import type { Campus } from '#domain/campus.js';
import type { Decisions, Plan } from '#domain/plan.js';
import type { SolveReport } from '#domain/tier.js';
import { inPosition } from '#planning/benefit-position.js';

export interface ReadPlan {
  readonly file: PlanFile;
  /** The campus in the position on benefit that was planned for. */
  readonly campus: Campus;
  readonly plan: Plan;
  readonly report: SolveReport;
}

/** A kept plan of a campus. Throws where it no longer reads: it was written by this program. */
export function savedPlan(document: unknown, campus: Campus): ReadPlan {
  const parse = parsePlanFile(document);
  if (!parse.ok)
    throw new Error(`a kept plan no longer reads: ${parse.problems[0]?.problem ?? ''}`);
  const reading = toPlan(parse.file, campus);
  if (!reading.ok)
    throw new Error(`a kept plan names what is not there: ${reading.problems[0]?.problem ?? ''}`);
  const taken = inPosition(campus, parse.file.campus.position);
  if (!taken.ok) throw new Error(`a kept plan cannot be seen as planned: ${taken.problem.problem}`);
  return {
    ...{ file: parse.file, campus: taken.campus },
    ...{ plan: reading.plan, report: reportOf(parse.file) },
  };
}

/**
 * The sites of a kept plan as decisions for a campus that may have changed since: what it no longer
 * has is left out. Hires, work days and purchases are worked out anew from the sites.
 */
export function earlierDecisions(document: unknown, campus: Campus): Decisions {
  const parse = parsePlanFile(document);
  const sites = new Set(campus.candidates.map(({ id }) => id));
  const placements = parse.ok ? parse.file.plan.placements : [];
  return {
    placements: placements.filter(({ site }) => sites.has(site)).map(toPlacement),
    ...{ hires: [], workDays: [], purchases: [] },
  };
}

export function reportOf(file: PlanFile): SolveReport {
  return { ending: file.ending, tiers: file.tiers, conflict: [] };
}
