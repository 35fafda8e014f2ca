import { randomUUID } from 'node:crypto';
import type { JsonDocument } from '#planning/json-document.js';
import { mostAttempts } from '#planning/lease-timing.js';
import type {
  CampusStore,
  CampusSummary,
  ReplaceOutcome,
  StoredCampus,
} from '#planning/ports/campus-store.js';
import type { Decision, DecisionStore } from '#planning/ports/decision-store.js';
import type { PlanStore, StoredPlan } from '#planning/ports/plan-store.js';
import type { SolveRequestStore } from '#planning/ports/solve-request-store.js';
import type {
  CancelOutcome,
  LeaseState,
  NewSolveRequest,
  RecoveredSolve,
  SolveClosing,
  SolveLease,
  SolveQueue,
} from '#planning/ports/solve-queue.js';
import { isFinal, type SolveProgress, type SolveRequest } from '#planning/solve-request.js';
import { anError } from '#domain/problem.js';
import { memoryExplanations } from './memory-explanations.js';

interface Row {
  request: SolveRequest;
  readonly brought: JsonDocument | null;
  lease: { holder: string; renewedAt: number } | null;
}

/** The ports of planning over plain maps, for tests that need no database. */
export function memoryStore() {
  const versions = new Map<string, StoredCampus[]>();
  const plans = new Map<string, StoredPlan>();
  const rows: Row[] = [];
  const newest = (id: string): StoredCampus | undefined => versions.get(id)?.at(-1);

  const campuses: CampusStore = {
    add: async ({ name, document }) => {
      const campus = { id: randomUUID(), name, version: 1, savedAt: new Date(), document };
      versions.set(campus.id, [campus]);
      return summaryOf(campus);
    },
    replace: async (change): Promise<ReplaceOutcome> => {
      const current = newest(change.id);
      if (!current) return { kind: 'unknown-campus' };
      if (current.version !== change.expectedVersion) {
        return { kind: 'version-conflict', current: current.version };
      }
      const next = { ...current, ...change, version: current.version + 1, savedAt: new Date() };
      const { id, name, version, savedAt, document } = next;
      versions.get(id)!.push({ id, name, version, savedAt, document });
      return { kind: 'saved', campus: { id, name, version, savedAt } };
    },
    list: async () => [...versions.values()].map((all) => summaryOf(all.at(-1)!)).reverse(),
    load: async (id, version) =>
      (version === undefined ? newest(id) : versions.get(id)?.[version - 1]) ?? null,
  };

  const held = ({ requestId, holder }: SolveLease): Row | undefined =>
    rows.find((row) => row.request.id === requestId && row.lease?.holder === holder);
  const close = (row: Row, change: Partial<SolveRequest>): void => {
    row.lease = null;
    row.request = { ...row.request, ...change, finishedAt: new Date() };
  };

  const queue: SolveQueue = {
    enqueue: async (wish) => {
      const request = newRequest(wish);
      rows.push({ request, brought: wish.brought?.document ?? null, lease: null });
      return request;
    },
    take: async () => {
      const row = rows.find(({ request }) => request.state === 'queued');
      if (!row) return null;
      const holder = randomUUID();
      row.lease = { holder, renewedAt: Date.now() };
      const { attempts, startedAt } = row.request;
      row.request = {
        ...row.request,
        state: 'solving',
        attempts: attempts + 1,
        startedAt: startedAt ?? new Date(),
      };
      const lease = { requestId: row.request.id, holder };
      return { lease, request: row.request, brought: row.brought };
    },
    renew: async (lease, progress): Promise<LeaseState> => {
      const row = held(lease);
      if (!row) return 'lost';
      row.lease = { holder: lease.holder, renewedAt: Date.now() };
      row.request = { ...row.request, progress: progress ?? row.request.progress };
      return row.request.cancelWanted ? 'cancel-wanted' : 'held';
    },
    finish: async (lease, closing) => {
      const row = held(lease);
      if (!row) return false;
      if ('plan' in closing && !plans.has(closing.plan.id)) {
        plans.set(closing.plan.id, { ...closing.plan, solvedAt: new Date() });
      }
      close(row, closedBy(closing));
      return true;
    },
    giveBack: async (lease) => {
      const row = held(lease);
      if (!row) return false;
      row.lease = null;
      const attempts = row.request.attempts - 1;
      row.request = { ...row.request, state: 'queued', attempts, progress: null };
      return true;
    },
    cancel: async (id): Promise<CancelOutcome> => {
      const row = rows.find(({ request }) => request.id === id);
      if (!row) return 'unknown-request';
      if (isFinal(row.request.state)) return 'already-final';
      row.request = { ...row.request, cancelWanted: true };
      if (row.request.state === 'solving') return 'cancel-wanted';
      close(row, { state: 'cancelled', ending: 'cancelled-without-plan' });
      return 'cancelled';
    },
    recover: async (lapsesAfter): Promise<RecoveredSolve[]> => {
      const lapsed = rows.filter(
        ({ lease }) => lease !== null && Date.now() - lease.renewedAt > lapsesAfter,
      );
      return lapsed.map((row) => {
        const { id, attempts, cancelWanted } = row.request;
        if (cancelWanted) {
          close(row, { state: 'cancelled', ending: 'cancelled-without-plan' });
          return { requestId: id, became: 'cancelled' };
        }
        if (attempts >= mostAttempts) {
          const place = { code: 'solver-lost', record: 'solve', field: '' };
          close(row, { state: 'failed', problem: anError(place, ['lost', 'again']) });
          return { requestId: id, became: 'failed' };
        }
        row.lease = null;
        row.request = { ...row.request, state: 'queued', progress: null };
        return { requestId: id, became: 'queued' };
      });
    },
    ping: async () => undefined,
  };

  const planStore: PlanStore = {
    load: async (id) => plans.get(id) ?? null,
    listOf: async (campusId, version) =>
      [...plans.values()]
        .filter((plan) => plan.campusId === campusId)
        .filter((plan) => version === undefined || plan.campusVersion === version)
        .map(({ plan: _plan, overview: _overview, ...summary }) => summary)
        .reverse(),
  };
  const requests: SolveRequestStore = {
    find: async (id) => rows.find(({ request }) => request.id === id)?.request ?? null,
    listOf: async (campusId) =>
      rows.map(({ request }) => request).filter((request) => request.campusId === campusId),
  };
  const kept: Decision[] = [];
  const decisions: DecisionStore = {
    record: async (decision) => {
      const recorded = { ...decision, decidedAt: new Date() };
      kept.unshift(recorded);
      return recorded;
    },
    listOf: async (campusId) => kept.filter((decision) => decision.campusId === campusId),
  };
  return {
    campuses,
    plans: planStore,
    requests,
    queue,
    decisions,
    explanations: memoryExplanations(),
  };
}

function summaryOf({ id, name, version, savedAt }: StoredCampus): CampusSummary {
  return { id, name, version, savedAt };
}

function newRequest({ brought, ...wish }: NewSolveRequest): SolveRequest {
  return {
    ...wish,
    broughtPlan: brought?.name ?? null,
    startFromPlan: wish.startFromPlan ?? null,
    id: randomUUID(),
    state: 'queued',
    progress: null as SolveProgress | null,
    attempts: 0,
    cancelWanted: false,
    planId: null,
    ending: null,
    conflict: [],
    problem: null,
    requestedAt: new Date(),
    startedAt: null,
    finishedAt: null,
  };
}

function closedBy(closing: SolveClosing): Partial<SolveRequest> {
  if (closing.kind === 'failed') return { state: 'failed', problem: closing.problem };
  if (closing.kind === 'brought-in') {
    return { state: 'done', ending: closing.plan.ending, planId: closing.plan.id };
  }
  const state = closing.ending.startsWith('cancelled') ? 'cancelled' : 'done';
  return closing.kind === 'solved'
    ? { state, ending: closing.ending, planId: closing.plan.id }
    : { state, ending: closing.ending, conflict: closing.conflict };
}

/** A document that stands for a campus file; the use cases never look inside. */
export const anyDocument: JsonDocument = { name: 'Tamarack Vale University' };
