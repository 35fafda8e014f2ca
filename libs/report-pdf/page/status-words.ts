import type { PlanDocument } from '#report/document/plan-document.js';

/** The status of a document as printed. */
export function statusWords(status: PlanDocument['status']): string {
  return status === 'draft' ? 'Draft, not approved' : 'Approved';
}
