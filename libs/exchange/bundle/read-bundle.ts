import { digestOf } from '#contracts/canonical.js';
import type { CampusFile } from '#contracts/campus-file.schema.js';
import { parseCampusFile } from '#contracts/parse-campus-file.js';
import { parsePlanFile } from '#contracts/plan-file.js';
import { anError, type Problem } from '#domain/problem.js';
import { decodeText } from '../reading/decode-text.js';
import type { PlanDraft } from '../reading/reading.js';
import { fileProblem } from '../reading/whole-file.js';
import { BUNDLE_FORMAT, MANIFEST_NAME, type BundlePlan, type Manifest } from './bundle-file.js';

export type BundleReading =
  | {
      readonly ok: true;
      readonly campus: CampusFile;
      readonly plans: readonly PlanDraft[];
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

type Files = ReadonlyMap<string, Uint8Array>;

/**
 * Reads every part of an unpacked bundle and holds it against its digest. A plan that cannot be read is
 * told as such: the campus must not be lost over it.
 */
export function readBundle(files: Files): BundleReading {
  const manifest = manifestOf(files);
  if (manifest === undefined) return { ok: false, problems: [noManifest()] };
  const campus = partOf(files, manifest.campus);
  if (campus === undefined) return { ok: false, problems: [damagedPart('campus.json')] };
  const parsed = parseCampusFile(campus);
  if (!parsed.ok) return { ok: false, problems: parsed.problems };
  const plans = manifest.plans.map((part) => planDraft(files, part));
  return { ok: true, campus: parsed.file, plans };
}

function planDraft(files: Files, part: BundlePlan): PlanDraft {
  const { file, name } = part;
  const document = partOf(files, part);
  if (document === undefined) return { name, problems: [damagedPart(file)] };
  const plan = parsePlanFile(document);
  return plan.ok ? { name, file: plan.file, problems: [] } : { name, problems: plan.problems };
}

function manifestOf(files: Files): Manifest | undefined {
  const document = jsonOf(files.get(MANIFEST_NAME));
  const manifest = document as Partial<Manifest> | undefined;
  const isOurs = manifest?.format === BUNDLE_FORMAT && manifest.formatVersion === 1;
  const isWhole = typeof manifest?.campus?.file === 'string' && Array.isArray(manifest.plans);
  const names = (manifest?.plans ?? []).map(({ name }) => name);
  const areNames = names.every((name) => /^[A-Za-z0-9._-]+$/.test(name));
  const areApart = new Set(names).size === names.length;
  return isOurs && isWhole && areNames && areApart ? (manifest as Manifest) : undefined;
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
