import type { SolveClosing } from '#planning/ports/solve-queue.js';
import type { Ending } from '#domain/tier.js';
import type { SolveState } from '#planning/solve-request.js';
import type { SolveRequestEntity } from '../entities/solve-request.entity.js';

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
  const open = { ...leaseless, finishedAt, ending: null, planId: null, conflict: [] };
  switch (closing.kind) {
    case 'failed':
      return { ...open, state: 'failed', problem: JSON.stringify(closing.problem) };
    case 'solved': {
      const { ending, plan } = closing;
      return { ...open, state: stateAfter(ending), ending, planId: plan.id, problem: null };
    }
    case 'brought-in': {
      const { ending, id } = closing.plan;
      return { ...open, state: 'done', ending, planId: id, problem: null };
    }
    case 'without-plan': {
      const { conflict, ending } = closing;
      return { ...open, state: stateAfter(ending), ending, conflict: [...conflict], problem: null };
    }
  }
}

function stateAfter(ending: Ending): SolveState {
  return ending === 'cancelled' || ending === 'cancelled-without-plan' ? 'cancelled' : 'done';
}
