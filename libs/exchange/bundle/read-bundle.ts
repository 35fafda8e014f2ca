import { digestOf } from '#contracts/canonical.js';
import type { CampusFile } from '#contracts/campus-file.schema.js';
import { parseCampusFile } from '#contracts/parse-campus-file.js';
import { parsePlanFile, planOriginProblems, type PlanFile } from '#contracts/plan-file.js';
import { anError, aWarning, type Problem } from '#domain/problem.js';
import { decodeText } from '../reading/decode-text.js';
import { fileProblem } from '../reading/whole-file.js';
import { BUNDLE_FORMAT, MANIFEST_NAME, type Manifest } from './bundle-file.js';

export type BundleReading =
  | {
      readonly ok: true;
      readonly campus: CampusFile;
      readonly plans: ReadonlyMap<string, PlanFile>;
      readonly warnings: readonly Problem[];
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

type Files = ReadonlyMap<string, Uint8Array>;

/** Reads every part of an unpacked bundle and holds it against its digest. */
export function readBundle(files: Files): BundleReading {
  const manifest = manifestOf(files);
  if (manifest === undefined) return { ok: false, problems: [noManifest()] };
  const campus = partOf(files, manifest.campus);
  if (campus === undefined) return { ok: false, problems: [damagedPart('campus.json')] };
  const parsed = parseCampusFile(campus);
  if (!parsed.ok) return { ok: false, problems: parsed.problems };
  const plans = new Map<string, PlanFile>();
  const warnings: Problem[] = [];
  for (const part of manifest.plans) {
    const document = partOf(files, part);
    const plan = document === undefined ? undefined : parsePlanFile(document);
    if (plan === undefined) return { ok: false, problems: [damagedPart(part.file)] };
    if (!plan.ok) return { ok: false, problems: plan.problems };
    plans.set(part.name, plan.file);
    if (planOriginProblems(plan.file, campus).length > 0) warnings.push(otherState(part.name));
  }
  return { ok: true, campus: parsed.file, plans, warnings };
}

function manifestOf(files: Files): Manifest | undefined {
  const document = jsonOf(files.get(MANIFEST_NAME));
  const manifest = document as Partial<Manifest> | undefined;
  const isOurs = manifest?.format === BUNDLE_FORMAT && manifest.formatVersion === 1;
  const isWhole = typeof manifest?.campus?.file === 'string' && Array.isArray(manifest.plans);
  const names = (manifest?.plans ?? []).every(({ name }) => /^[A-Za-z0-9._-]+$/.test(name));
  return isOurs && isWhole && names ? (manifest as Manifest) : undefined;
}

/** The document of a part; undefined where it is missing or not what its digest says. */
function partOf(files: Files, { file, digest }: Manifest['campus']): unknown {
  const document = jsonOf(files.get(file));
  return document !== undefined && digestOf(document) === digest ? document : undefined;
}

function jsonOf(bytes: Uint8Array | undefined): unknown {
  const decoding = bytes && decodeText(bytes);
  if (!decoding?.ok) return undefined;
  try {
    return JSON.parse(decoding.text) as unknown;
  } catch {
    return undefined;
  }
}

function noManifest(): Problem {
  return fileProblem('BUNDLE-UNKNOWN', [
    'The archive is no campus bundle and no workbook.',
    `Give a bundle that this program wrote: it holds ${MANIFEST_NAME}.`,
  ]);
}

function damagedPart(file: string): Problem {
  return anError({ code: 'BUNDLE-DAMAGED', record: 'the file', field: file }, [
    `The part ${file} is missing, damaged, or not the one that was exported.`,
    'Fetch or export the bundle again; to change a campus, change its campus file.',
  ]);
}

function otherState(name: string): Problem {
  return aWarning({ code: 'PLAN-OTHER-CAMPUS', record: `plan ${name}`, field: '' }, [
    'The plan was made from another state of the campus than the one in the bundle.',
    'It can be read and not verified; solve again.',
  ]);
}
