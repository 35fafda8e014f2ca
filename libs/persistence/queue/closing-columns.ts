import type { SolveClosing } from '#planning/ports/solve-queue.js';
import type { SolveEnding } from '#planning/solve-ending.js';
import type { SolveState } from '#planning/solve-request.js';
import type { SolveRequestEntity } from '../entities/solve-request.entity.js';
import { toText } from '../stores/json-text.js';

export const leaseless = { leaseHolder: null, leaseRenewedAt: null } as const;

type ClosingColumns = Pick<
  SolveRequestEntity,
  | 'state'
  | 'ending'
  | 'planId'
  | 'conflict'
  | 'problem'
  | 'finishedAt'
  | 'leaseHolder'
  | 'leaseRenewedAt'
>;

/** The columns that close a request. */
export function closingColumns(closing: SolveClosing, finishedAt: Date): ClosingColumns {
  const open = { ...leaseless, finishedAt, ending: null, planId: null, conflict: null };
  switch (closing.kind) {
    case 'failed':
      return { ...open, state: 'failed', problem: JSON.stringify(closing.problem) };
    case 'solved': {
      const { ending, plan } = closing;
      return { ...open, state: stateAfter(ending), ending, planId: plan.id, problem: null };
    }
    case 'without-plan': {
      const conflict = closing.conflict && toText(closing.conflict);
      const { ending } = closing;
      return { ...open, state: stateAfter(ending), ending, conflict, problem: null };
    }
  }
}

function stateAfter(ending: SolveEnding): SolveState {
  return ending === 'cancelled' || ending === 'cancelled-without-plan' ? 'cancelled' : 'done';
}
