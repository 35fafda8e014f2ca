import { basename } from 'node:path';
import type { ExportFormat, ExportTable } from '#contracts/http/exports.js';
import type { PlanFile } from '#contracts/plan-file.js';
import { checkPlanFile } from '#planning/check-plan-file.js';
import type { JsonDocument } from '#planning/json-document.js';
import { fileExchange } from '../../adapters/file-exchange.js';
import { CommandFailure, EXIT } from '../exit-codes.js';
import { asJson, type Output } from '../output.js';
import { breachLines } from '../problem-lines.js';
import { readCampus, readPlan, writeText, type CampusInput } from '../read-files.js';
import { ensureCanSave } from '../save-place.js';

export interface ExportOptions {
  readonly format: ExportFormat;
  readonly out: string;
  readonly table: ExportTable;
  readonly year?: string;
  readonly audience: 'campus' | 'public';
  readonly json?: true;
}

/** `export CAMPUS.json [PLAN.json] --format FORMAT --out FILE`: a plan that is not verified is not exported. */
export async function exportCampus(
  files: { readonly campus: string; readonly plan: string | undefined },
  options: ExportOptions,
  output: Output,
): Promise<number> {
  const input = await readCampus(files.campus);
  await ensureCanSave(options.out, files.campus);
  const { audience, format, table, year } = options;
  const plan = files.plan === undefined ? undefined : await verifiedPlan(files.plan, input);
  const answer = await fileExchange.write({
    ...{ format, table, audience, year },
    campus: input.document as JsonDocument,
    plan,
    bundled: new Map(plan && files.plan ? [[planNameOf(files.plan), plan]] : []),
  });
  if (!answer.ok) throw new CommandFailure(EXIT.badInput, [REFUSALS[answer.refusal]]);
  const { bytes, mediaType } = answer.exported;
  await writeText(options.out, bytes);
  const written = { file: options.out, mediaType, bytes: bytes.length };
  output.out(options.json ? asJson(written) : `Wrote ${options.out}`);
  if (audience === 'campus' && !options.json) output.note(INTERNAL);
  return EXIT.fine;
}

const REFUSALS = {
  'plan-needed':
    'This is worked out from a plan; give the plan file after the campus file, or another --table.',
  'not-public':
    'A bundle holds the whole campus, so there is no public one; leave out --audience public.',
} as const;

const INTERNAL =
  'This copy may hold lab values, utility detail and names of gifts; for people outside use --audience public.';

async function verifiedPlan(path: string, input: CampusInput): Promise<PlanFile> {
  const { file, plan, campus } = await readPlan(path, input);
  const breaches = checkPlanFile(campus, plan, file);
  if (breaches.length === 0) return file;
  const refusal = 'The plan does not pass its checks, so it is not exported:';
  throw new CommandFailure(EXIT.checkFailed, [refusal, ...breachLines(breaches)]);
}

/** A name that may stand in an archive, from the name of a file. */
function planNameOf(path: string): string {
  return basename(path, '.json').replace(/[^A-Za-z0-9._-]+/g, '-') || 'plan';
}
