import { parsePlanFile, toPlan } from '#contracts/plan-file.js';
import type { Breach } from '#domain/breach.js';
import type { Campus } from '#domain/campus.js';
import type { Problem } from '#domain/problem.js';
import { inPosition } from '#planning/benefit-position.js';
import { checkPlanFile } from '#planning/check-plan-file.js';
import type { PlanChecker } from '#planning/ports/plan-checker.js';
import { campusOf } from './campus-document.js';

/** Judges plan documents by every rule, from the campus document alone. */
export const ruleChecker: PlanChecker = {
  check(campusDocument, planDocument) {
    const breaches = breachesOf(campusOf(campusDocument), planDocument);
    return Promise.resolve({ verified: breaches.length === 0, breaches });
  },
};

/** The campus is judged in the position on benefit that was planned for. */
function breachesOf(campus: Campus, planDocument: unknown): Breach[] {
  const parse = parsePlanFile(planDocument);
  if (!parse.ok) return parse.problems.map(asBreach);
  const taken = inPosition(campus, parse.file.campus.position);
  if (!taken.ok) return [asBreach(taken.problem)];
  const reading = toPlan(parse.file, taken.campus);
  if (!reading.ok) return reading.problems.map(asBreach);
  return checkPlanFile(taken.campus, reading.plan, parse.file);
}

function asBreach({ record, problem }: Problem): Breach {
  return { rule: 'plan-file', record, message: problem };
}
