import type { CampusStore } from '../ports/campus-store.js';
import type { Exchange, ExportAnswer, ExportRequest } from '../ports/exchange.js';
import type { PlanStore } from '../ports/plan-store.js';
import { planWithCampus } from './plan-with-campus.js';

interface Ports {
  readonly campuses: CampusStore;
  readonly plans: PlanStore;
  readonly exchange: Exchange;
}

export interface ExportOfStored extends Omit<ExportRequest, 'campus' | 'plan' | 'planName'> {
  readonly campusId: string;
  /** Left out: the newest version of the campus, without a plan. */
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
    return written(ports, { ...wish, campus: campus.document });
  }
  const found = await planWithCampus(ports, planId);
  if (found?.campus.id !== campusId) return { kind: 'unknown-plan' };
  const { campus, plan } = found;
  const planName = `plan-${planId.slice(0, 8)}`;
  return written(ports, { ...wish, campus: campus.document, plan: plan.plan, planName });
}

async function written({ exchange }: Ports, request: ExportRequest): Promise<ExportOutcome> {
  return { kind: 'written', answer: await exchange.write(request) };
}
