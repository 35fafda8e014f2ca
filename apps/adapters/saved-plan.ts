import { toPlacement } from '#contracts/conversion/lives.js';
import { parsePlanFile, toPlan, type PlanFile } from '#contracts/plan-file.js';
import type { Campus } from '#domain/campus.js';
import type { Decisions, Plan } from '#domain/plan.js';
import type { Problem } from '#domain/problem.js';
import type { SolveReport } from '#domain/tier.js';
import { inPosition } from '#planning/benefit-position.js';
import { UnreadablePlanError } from '#planning/unreadable-plan.js';

export interface ReadPlan {
  readonly file: PlanFile;
  /** The campus in the position on benefit that was planned for. */
  readonly campus: Campus;
  readonly plan: Plan;
  readonly report: SolveReport;
}

/** A kept plan of a campus. Throws where it no longer reads: an earlier program wrote it. */
export function savedPlan(document: unknown, campus: Campus): ReadPlan {
  const parse = parsePlanFile(document);
  if (!parse.ok) throw unreadable('no longer reads', parse.problems[0]);
  const reading = toPlan(parse.file, campus);
  if (!reading.ok) throw unreadable('names what is not there', reading.problems[0]);
  const taken = inPosition(campus, parse.file.campus.position);
  if (!taken.ok) throw unreadable('cannot be seen as planned', taken.problem);
  return {
    ...{ file: parse.file, campus: taken.campus },
    ...{ plan: reading.plan, report: reportOf(parse.file) },
  };
}

function unreadable(what: string, first: Problem | undefined): UnreadablePlanError {
  return new UnreadablePlanError(`a kept plan ${what}: ${first?.problem ?? ''}`);
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
