import type { PlanDocument } from '#report/document/plan-document.js';

/** The status of a document as printed. */
export function statusWords({
  status,
  approvedBy,
}: Pick<PlanDocument, 'status' | 'approvedBy'>): string {
  if (status === 'draft') return 'Draft, not approved';
  return approvedBy === undefined ? 'Approved' : `Approved by ${approvedBy}`;
}
