import { checkPlanFile } from '#planning/check-plan-file.js';
import { EXIT } from '../exit-codes.js';
import { asJson, type Output } from '../output.js';
import { counted } from '../problem-lines.js';
import { readCampus, readPlan } from '../read-files.js';

/** `verify CAMPUS.json PLAN.json`: recomputes a saved plan from the campus file alone. */
export async function verify(
  files: { campus: string; plan: string },
  options: { json?: true },
  output: Output,
): Promise<number> {
  const input = await readCampus(files.campus);
  const { plan, file } = await readPlan(files.plan, input);
  const breaches = checkPlanFile(input.campus, plan, file.tiers);
  const verified = breaches.length === 0;
  if (options.json) {
    output.out(asJson({ verified, breaches }));
  } else {
    for (const b of breaches) output.out(`  ${b.rule}  ${b.record}: ${b.message}`);
    output.out(
      verified
        ? `Verified: the plan keeps every rule, recomputed from ${files.campus} to the cent and the hundredth of an hour.`
        : `Not verified: ${counted(breaches.length, 'breach').replace('breachs', 'breaches')}.`,
    );
  }
  return verified ? EXIT.fine : EXIT.checkFailed;
}
