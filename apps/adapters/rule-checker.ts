import { parsePlanFile, toPlan } from '#contracts/plan-file.js';
import type { Breach } from '#domain/breach.js';
import type { Problem } from '#domain/problem.js';
import type { PlanChecker } from '#planning/ports/plan-checker.js';
import { checkPlanFile } from '#planning/check-plan-file.js';
import { campusOf } from './campus-document.js';

/** Judges plan documents by every rule, from the campus document alone. */
export const ruleChecker: PlanChecker = {
  check(campusDocument, planDocument) {
    const campus = campusOf(campusDocument);
    const parse = parsePlanFile(planDocument);
    if (!parse.ok)
      return Promise.resolve({ verified: false, breaches: parse.problems.map(asBreach) });
    const reading = toPlan(parse.file, campus);
    if (!reading.ok)
      return Promise.resolve({ verified: false, breaches: reading.problems.map(asBreach) });
    const breaches = checkPlanFile(campus, reading.plan, parse.file);
    return Promise.resolve({ verified: breaches.length === 0, breaches });
  },
};

function asBreach({ record, problem }: Problem): Breach {
  return { rule: 'plan-file', record, message: problem };
}
