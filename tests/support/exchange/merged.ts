import { readFileSync } from 'node:fs';
import type { CampusFile } from '#contracts/campus-file.schema.js';
import { exportFile, type ExportWish } from '#exchange/export-file.js';
import { readImport } from '#exchange/reading/read-import.js';
import { campusReader } from '#apps/adapters/campus-reader.js';
import { judgeImport } from '#planning/imports/judge-import.js';
import type { JsonDocument } from '#planning/json-document.js';

/** The demo campus, an invented university with 34 sites. */
export function demoFile(): CampusFile {
  return JSON.parse(readFileSync('seeds/demo-strained.json', 'utf8')) as CampusFile;
}

type Wish = Partial<ExportWish> & Pick<ExportWish, 'file' | 'format'>;

/** The bytes of an export; throws where it is refused. */
export async function exported(wish: Wish): Promise<Uint8Array> {
  const answer = await exportFile({ table: 'sites', audience: 'campus', ...wish });
  if (!answer.ok) throw new Error(answer.refusal);
  return answer.exported.bytes;
}

/** The dry run of a file against a campus, judged as the program judges it. */
export async function dryRun(bytes: Uint8Array | string, file: CampusFile) {
  const given = typeof bytes === 'string' ? new TextEncoder().encode(bytes) : bytes;
  const { document, plans, ...reading } = await readImport(given, file);
  return judgeImport(
    {
      ...reading,
      document: document as JsonDocument,
      plans: plans.map(({ file: plan, ...rest }) => (plan ? { ...rest, document: plan } : rest)),
    },
    campusReader,
  );
}
