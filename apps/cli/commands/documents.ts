import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { checkPlanFile } from '#planning/check-plan-file.js';
import { overviewDocument, overviewOf } from '#planning/overview-document.js';
import { documentKinds } from '#planning/ports/document-writer.js';
import { drawDocument } from '../../adapters/plan-documents.js';
import { reportOf } from '../../adapters/saved-plan.js';
import { CommandFailure, EXIT } from '../exit-codes.js';
import { asJson, type Output } from '../output.js';
import { breachLines } from '../problem-lines.js';
import { readCampus, readPlan, writeText } from '../read-files.js';

/** `documents CAMPUS.json PLAN.json --out DIR`: every document of a plan; a plan that is not verified gets none. */
export async function documents(
  files: { campus: string; plan: string },
  options: { out: string; json?: true },
  output: Output,
): Promise<number> {
  const input = await readCampus(files.campus);
  const { plan, file } = await readPlan(files.plan, input);
  const breaches = checkPlanFile(input.campus, plan, file);
  if (breaches.length > 0) {
    const refusal = 'The plan does not pass its checks, so no document is written:';
    throw new CommandFailure(EXIT.checkFailed, [refusal, ...breachLines(breaches)]);
  }
  await makeFolder(options.out);
  const overview = overviewOf(overviewDocument(input.campus, plan, reportOf(file)));
  const written: string[] = [];
  for (const kind of documentKinds) {
    const made = await drawDocument(kind, file, overview);
    const path = join(options.out, made.fileName);
    await writeText(path, made.bytes);
    written.push(path);
  }
  const text = written.map((path) => `Wrote ${path}`).join('\n');
  output.out(options.json ? asJson({ documents: written }) : text);
  return EXIT.fine;
}

async function makeFolder(path: string): Promise<void> {
  try {
    await mkdir(path, { recursive: true });
  } catch {
    throw new CommandFailure(EXIT.badInput, [
      `${path} cannot be made or is not a folder; give a folder that this user may write into`,
    ]);
  }
}
