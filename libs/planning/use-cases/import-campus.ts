import { canonicalJson } from '#contracts/canonical.js';
import type { ImportPlan, ImportReport } from '#contracts/http/imports.js';
import { changesNothing, judgeImport } from '../imports/judge-import.js';
import { statedSolve } from '../imports/judge-plans.js';
import type { JsonDocument } from '../json-document.js';
import type { CampusReader } from '../ports/campus-reader.js';
import type { CampusStore, StoredCampus } from '../ports/campus-store.js';
import type { Exchange, FileReading } from '../ports/exchange.js';
import type { PlanStore } from '../ports/plan-store.js';
import type { SolveQueue } from '../ports/solve-queue.js';
import { replaceCampus, type SaveOutcome } from './save-campus.js';

interface Ports {
  readonly campuses: CampusStore;
  readonly plans: PlanStore;
  readonly queue: SolveQueue;
  readonly reader: CampusReader;
  readonly exchange: Exchange;
}

/** The dry run of an import into a stored campus. Nothing is saved. */
export async function previewImport(
  ports: Ports,
  campus: StoredCampus,
  bytes: Uint8Array,
): Promise<ImportReport> {
  return (await judged(ports, campus, bytes)).report;
}

/** A plan of a bundle that a worker is to check and keep. */
export interface RequestedPlan {
  readonly name: string;
  readonly solveId: string;
}

type Refused = Exclude<SaveOutcome, { kind: 'saved' }>;

export type ImportOutcome =
  | {
      readonly kind: 'applied';
      readonly version: number;
      readonly report: ImportReport;
      readonly broughtPlans: readonly RequestedPlan[];
    }
  /** A record is rejected or the campus would not be sound: nothing was saved. */
  | { readonly kind: 'rejected'; readonly report: ImportReport }
  | Refused;

/**
 * Saves an import as the next version of a campus, all of it or nothing, unless somebody else has saved
 * since it was loaded. A file that changes nothing saves nothing, so that it can be given twice. The
 * plans of a bundle are asked for after that, one by one: were this cut off, the bundle given again
 * brings what is missing.
 */
export async function applyImport(
  ports: Ports,
  campus: StoredCampus,
  bytes: Uint8Array,
): Promise<ImportOutcome> {
  const found = await judged(ports, campus, bytes);
  const { report } = found;
  if (!report.canApply) return { kind: 'rejected', report };
  const version = await savedVersion(ports, campus, found);
  if (typeof version !== 'number') return version;
  const broughtPlans = await askForPlans(ports.queue, { campusId: campus.id, version }, found);
  return { kind: 'applied', version, report, broughtPlans };
}

/** A file as it was read, and what it would do. */
interface Judged {
  readonly reading: FileReading;
  readonly report: ImportReport;
}

async function judged(ports: Ports, campus: StoredCampus, bytes: Uint8Array): Promise<Judged> {
  const reading = await ports.exchange.read(bytes, campus.document);
  const report = judgeImport(reading, ports.reader);
  // A plan is of one version of a campus, so that a version to come has none yet.
  if (!changesNothing(report)) return { reading, report };
  const plans: ImportPlan[] = [];
  for (const plan of report.plans) {
    const document = documentOf(reading, plan.name);
    const isHere = plan.outcome === 'new' && (await isStored(ports.plans, campus, document));
    plans.push(isHere ? { ...plan, outcome: 'unchanged' } : plan);
  }
  return { reading, report: { ...report, plans } };
}

function documentOf({ plans }: FileReading, name: string): JsonDocument | undefined {
  return plans.find((plan) => plan.name === name)?.document;
}

/** Whether the same plan is stored for this version of the campus. */
async function isStored(
  plans: PlanStore,
  { id, version }: StoredCampus,
  document: JsonDocument | undefined,
): Promise<boolean> {
  const seed = statedSolve(document)?.seed;
  const text = canonicalJson(document);
  for (const summary of await plans.listOf(id, version)) {
    if (summary.seed !== seed) continue;
    if (canonicalJson((await plans.load(summary.id))?.plan) === text) return true;
  }
  return false;
}

async function savedVersion(
  ports: Ports,
  { id, version }: StoredCampus,
  { reading, report }: Judged,
): Promise<number | Refused> {
  if (changesNothing(report)) return version;
  const { document } = reading;
  const outcome = await replaceCampus(ports, { id, expectedVersion: version, document });
  return outcome.kind === 'saved' ? outcome.campus.version : outcome;
}

async function askForPlans(
  queue: SolveQueue,
  { campusId, version }: { readonly campusId: string; readonly version: number },
  { reading, report }: Judged,
): Promise<RequestedPlan[]> {
  const requested: RequestedPlan[] = [];
  for (const { name, outcome } of report.plans) {
    const document = documentOf(reading, name);
    const stated = statedSolve(document);
    if (outcome !== 'new' || document === undefined || stated === undefined) continue;
    const from = { campusId, campusVersion: version };
    const request = await queue.enqueue({ ...from, ...stated, brought: { name, document } });
    requested.push({ name, solveId: request.id });
  }
  return requested;
}
