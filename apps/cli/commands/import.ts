import type { ImportReport } from '#contracts/http/imports.js';
import { changesNothing, judgeImport } from '#planning/imports/judge-import.js';
import { withCheckedPlans } from '#planning/imports/judge-plans.js';
import type { JsonDocument } from '#planning/json-document.js';
import type { FileReading } from '#planning/ports/exchange.js';
import { campusReader } from '../../adapters/campus-reader.js';
import { fileExchange } from '../../adapters/file-exchange.js';
import { ruleChecker } from '../../adapters/rule-checker.js';
import { CommandFailure, EXIT } from '../exit-codes.js';
import { jsonText, readBytes, replaceFile } from '../file-bytes.js';
import { importLines } from '../import-lines.js';
import { asJson, type Output } from '../output.js';
import { readCampus } from '../read-files.js';
import { ensureCanSave } from '../save-place.js';

export interface ImportOptions {
  readonly apply?: true;
  readonly out?: string;
  readonly json?: true;
}

/**
 * `import CAMPUS.json FILE`: what a file would change, record by record; with `--apply` it is changed,
 * all of it or, where a record is rejected, nothing.
 */
export async function importFile(
  files: { readonly campus: string; readonly file: string },
  options: ImportOptions,
  output: Output,
): Promise<number> {
  if (options.out !== undefined) await ensureMayWrite(files, options);
  const input = await readCampus(files.campus);
  const bytes = await readBytes(files.file);
  const reading = await fileExchange.read(bytes, input.document as JsonDocument);
  const judged = judgeImport(reading, campusReader);
  const report = judged.canApply ? await withCheckedPlans(judged, reading, ruleChecker) : judged;
  const wantsToSave = options.apply === true && report.canApply;
  const place = options.out ?? files.campus;
  const isSaved = wantsToSave && (options.out !== undefined || !changesNothing(report));
  const saved = isSaved ? await save(place, reading, report) : [];
  if (options.json) output.out(asJson({ ...report, saved }));
  else for (const line of importLines(report, { apply: options.apply, saved })) output.out(line);
  return report.canApply ? EXIT.fine : EXIT.badInput;
}

async function ensureMayWrite(
  { campus }: { readonly campus: string },
  { apply, out = '' }: ImportOptions,
): Promise<void> {
  if (!apply) {
    const said = 'A file is written only with --apply; without it, this shows what would change.';
    throw new CommandFailure(EXIT.badInput, [said]);
  }
  await ensureCanSave(out, campus);
}

/** Saves the campus, and beside it the plans that passed their checks; answers what was written. */
async function save(
  path: string,
  { document, plans }: FileReading,
  report: ImportReport,
): Promise<string[]> {
  await replaceFile(path, jsonText(document));
  const written = [path];
  const kept = new Set(report.plans.flatMap((p) => (p.outcome === 'rejected' ? [] : [p.name])));
  for (const { document: plan, name } of plans) {
    if (plan === undefined || !kept.has(name)) continue;
    const beside = `${path.replace(/\.json$/i, '')}-${name}.json`;
    await replaceFile(beside, jsonText(plan));
    written.push(beside);
  }
  return written;
}
