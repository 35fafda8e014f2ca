import type { JsonDocument } from '../json-document.js';
import type { CampusStore, StoredCampus } from '../ports/campus-store.js';
import type { Exchange, ExportAnswer, ExportRequest } from '../ports/exchange.js';
import type { PlanStore } from '../ports/plan-store.js';
import { planWithCampus } from './plan-with-campus.js';

interface Ports {
  readonly campuses: CampusStore;
  readonly plans: PlanStore;
  readonly exchange: Exchange;
}

export interface ExportOfStored extends Omit<ExportRequest, 'campus' | 'plan' | 'bundled'> {
  readonly campusId: string;
  /** Left out: the newest version of the campus, in a bundle with all its plans and else without one. */
  readonly planId?: string | undefined;
}

export type ExportOutcome =
  | { readonly kind: 'unknown-campus' | 'unknown-plan' }
  | { readonly kind: 'written'; readonly answer: ExportAnswer };

/** Writes a stored campus, or a stored plan with the version of the campus that it was solved for. */
export async function exportCampus(
  ports: Ports,
  { campusId, planId, ...wish }: ExportOfStored,
): Promise<ExportOutcome> {
  if (planId === undefined) {
    const campus = await ports.campuses.load(campusId);
    if (campus === null) return { kind: 'unknown-campus' };
    const bundled = wish.format === 'bundle' ? await plansOf(ports.plans, campus) : undefined;
    return written(ports, { ...wish, campus: campus.document, bundled });
  }
  const found = await planWithCampus(ports, planId);
  if (found?.campus.id !== campusId) return { kind: 'unknown-plan' };
  const { campus, plan } = found;
  const bundled = new Map([[nameOf(planId), plan.plan]]);
  return written(ports, { ...wish, campus: campus.document, plan: plan.plan, bundled });
}

/** Every plan of this version of the campus. */
async function plansOf(
  plans: PlanStore,
  { id, version }: StoredCampus,
): Promise<Map<string, JsonDocument>> {
  const newestFirst = await plans.listOf(id, version);
  const named = new Map<string, JsonDocument>();
  for (const summary of [...newestFirst].reverse()) {
    const stored = await plans.load(summary.id);
    if (stored !== null) named.set(nameOf(stored.id), stored.plan);
  }
  return named;
}

function nameOf(planId: string): string {
  return `plan-${planId.slice(0, 8)}`;
}

async function written({ exchange }: Ports, request: ExportRequest): Promise<ExportOutcome> {
  return { kind: 'written', answer: await exchange.write(request) };
}
