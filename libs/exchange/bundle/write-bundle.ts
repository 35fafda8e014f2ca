import { strToU8, zipSync } from 'fflate';
import { digestOf } from '#contracts/canonical.js';
import type { CampusFile } from '#contracts/campus-file.schema.js';
import { writePlanFile, type PlanFile } from '#contracts/plan-file.js';
import { BUNDLE_FORMAT, MANIFEST_NAME, type Manifest } from './bundle-file.js';

/** A date within what an archive can hold, the same for all, so that equal contents give equal bytes. */
const NO_DATE = '1980-01-02T00:00:00';

/** One archive with all that hands a campus over: the campus, its plans, what their documents need. */
export function writeBundle(file: CampusFile, plans: ReadonlyMap<string, PlanFile>): Uint8Array {
  const named = [...plans].map(([name, plan]) => ({ name, plan, path: `plans/${name}.json` }));
  const manifest: Manifest = {
    format: BUNDLE_FORMAT,
    formatVersion: 1,
    campus: { file: 'campus.json', digest: digestOf(file) },
    plans: named.map(({ name, plan, path }) => ({
      name,
      file: path,
      digest: digestOf(plan),
      documents: { createdAt: file.dataDate },
    })),
  };
  const parts = {
    [MANIFEST_NAME]: strToU8(`${JSON.stringify(manifest, null, 2)}\n`),
    'campus.json': strToU8(`${JSON.stringify(file, null, 2)}\n`),
    ...Object.fromEntries(named.map(({ path, plan }) => [path, strToU8(writePlanFile(plan))])),
  };
  return zipSync(parts, { mtime: NO_DATE });
}
