import type { CampusStore } from '../ports/campus-store.js';
import type { DocumentKind, DocumentWriter, WrittenDocument } from '../ports/document-writer.js';
import type { PlanStore } from '../ports/plan-store.js';
import { planWithCampus } from './plan-with-campus.js';

interface Ports {
  readonly campuses: CampusStore;
  readonly plans: PlanStore;
  readonly writer: DocumentWriter;
}

/** Writes one document of a stored plan. Null: no such plan. */
export async function writeDocument(
  ports: Ports,
  planId: string,
  kind: DocumentKind,
): Promise<WrittenDocument | null> {
  const found = await planWithCampus(ports, planId);
  if (found === null) return null;
  const { campus, plan } = found;
  return ports.writer.write({
    kind,
    campus: campus.document,
    plan: plan.plan,
    overview: plan.overview,
  });
}
