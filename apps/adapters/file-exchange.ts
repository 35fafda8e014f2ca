import type { CampusFile } from '#contracts/campus-file.schema.js';
import { parseCampusFile } from '#contracts/parse-campus-file.js';
import { parsePlanFile, type PlanFile } from '#contracts/plan-file.js';
import { exportFile } from '#exchange/export-file.js';
import { readImport } from '#exchange/reading/read-import.js';
import type { JsonDocument } from '#planning/json-document.js';
import type { Exchange } from '#planning/ports/exchange.js';

/** Translates documents to and from the formats of other programs. */
export const fileExchange: Exchange = {
  async read(bytes, campus) {
    const { document, plans, ...reading } = await readImport(bytes, campusFileOf(campus));
    return {
      ...reading,
      document: document as JsonDocument,
      plans: plans.map(({ file, ...plan }) => (file ? { ...plan, document: file } : plan)),
    };
  },
  write: ({ bundled = new Map<string, JsonDocument>(), campus, plan, ...wish }) =>
    exportFile({
      ...wish,
      file: campusFileOf(campus),
      plan: plan && planFileOf(plan),
      bundled: new Map([...bundled].map(([name, kept]) => [name, planFileOf(kept)])),
    }),
};

/** Throws where a document that was judged before it was kept no longer reads. */
function campusFileOf(document: JsonDocument): CampusFile {
  const parse = parseCampusFile(document);
  if (parse.ok) return parse.file;
  const first = parse.problems.find(({ severity }) => severity === 'error');
  throw new Error(`a kept campus no longer reads: ${first?.record ?? ''} ${first?.problem ?? ''}`);
}

function planFileOf(document: JsonDocument): PlanFile {
  const parse = parsePlanFile(document);
  if (parse.ok) return parse.file;
  throw new Error(`a kept plan no longer reads: ${parse.problems[0]?.problem ?? ''}`);
}
