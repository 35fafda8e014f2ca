import { toPlan, type PlanFile } from '#contracts/plan-file.js';
import type { Breach } from '#domain/breach.js';
import type { Campus } from '#domain/campus.js';
import { checkPlanFile } from '#planning/check-plan-file.js';
import { EXIT } from '../exit-codes.js';
import { asJson, type Output } from '../output.js';
import { breachLines, counted } from '../problem-lines.js';
import { campusInPosition, readCampus, readPlanFile } from '../read-files.js';

/**
 * `verify CAMPUS.json PLAN.json`: recomputes a saved plan from the campus file alone. A file that is
 * no plan of this very campus file cannot be judged; any other that falls short fails its checks.
 */
export async function verify(
  files: { campus: string; plan: string },
  options: { json?: true },
  output: Output,
): Promise<number> {
  const input = await readCampus(files.campus);
  const file = await readPlanFile(files.plan, input);
  const breaches = breachesOf(file, campusInPosition(input, file.campus.position));
  const verified = breaches.length === 0;
  if (options.json) {
    output.out(asJson({ verified, breaches }));
  } else {
    for (const line of breachLines(breaches)) output.out(line);
    output.out(
      verified
        ? `Verified: the plan keeps every rule, recomputed from ${files.campus} to the cent and the hundredth of an hour.`
        : `Not verified: ${counted(breaches.length, 'breach', 'breaches')}.`,
    );
  }
  return verified ? EXIT.fine : EXIT.checkFailed;
}

function breachesOf(file: PlanFile, campus: Campus): Breach[] {
  const reading = toPlan(file, campus);
  if (reading.ok) return checkPlanFile(campus, reading.plan, file);
  return reading.problems.map((p) => ({
    rule: 'plan-file',
    record: p.record,
    message: p.problem,
  }));
}
