import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { documentWriter } from '../../adapters/document-writer.js';
import { EXIT } from '../exit-codes.js';
import { asJson, type Output } from '../output.js';
import { readCampus, readPlan, writeText } from '../read-files.js';
import { CommandFailure } from '../exit-codes.js';
import { checkPlanFile } from '#planning/check-plan-file.js';
import { documentKinds } from '#planning/ports/document-writer.js';

/** `documents CAMPUS.json PLAN.json --out DIR`: every document of a plan; a plan that is not verified gets none. */
export async function documents(
  files: { campus: string; plan: string },
  options: { out: string; json?: true },
  output: Output,
): Promise<number> {
  const input = await readCampus(files.campus);
  const { plan, file } = await readPlan(files.plan, input);
  const breaches = checkPlanFile(input.campus, plan, file.tiers);
  if (breaches.length > 0) {
    const lines = breaches.map((b) => `  ${b.rule}  ${b.record}: ${b.message}`);
    throw new CommandFailure(EXIT.checkFailed, ['The plan does not pass its checks, so no document is written:', ...lines]);
  }
  await makeFolder(options.out);
  const written: string[] = [];
  for (const kind of documentKinds) {
    const made = await documentWriter.write({ kind, campus: input.campus, plan, file });
    const path = join(options.out, made.fileName);
    await writeText(path, made.bytes);
    written.push(path);
  }
  output.out(options.json ? asJson({ documents: written }) : written.map((p) => `Wrote ${p}`).join('\n'));
  return EXIT.fine;
}

async function makeFolder(path: string): Promise<void> {
  try {
    await mkdir(path, { recursive: true });
  } catch {
    throw new CommandFailure(EXIT.badInput, [`${path} cannot be made or is not a folder`]);
  }
}
