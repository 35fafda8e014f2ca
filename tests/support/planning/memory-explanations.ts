import { randomUUID } from 'node:crypto';
import type {
  Explanation,
  ExplanationLease,
  ExplanationStore,
} from '#planning/ports/explanation-store.js';

/** Explanations in a plain list, for tests that need no database. */
export function memoryExplanations(): ExplanationStore {
  const rows: { explanation: Explanation; holder: string | null; renewedAt: number }[] = [];
  const held = ({ id, holder }: ExplanationLease) =>
    rows.find((r) => r.explanation.id === id && r.holder === holder);
  const change = (lease: ExplanationLease, to: Partial<Explanation>, keeps: 'lease' | 'none') => {
    const row = held(lease);
    if (!row) return false;
    row.explanation = { ...row.explanation, ...to };
    if (keeps === 'none') row.holder = null;
    row.renewedAt = Date.now();
    return true;
  };
  const list = (isOf: (explanation: Explanation) => boolean) =>
    rows
      .map((r) => r.explanation)
      .filter(isOf)
      .reverse();
  return {
    add: async (asked) => {
      const explanation: Explanation = {
        ...asked,
        ...{ state: 'queued', progress: null, answer: null, problem: null, attempts: 0 },
        ...{ askedAt: new Date(), finishedAt: null },
      };
      rows.push({ explanation, holder: null, renewedAt: 0 });
      return explanation;
    },
    load: async (id) => rows.find((r) => r.explanation.id === id)?.explanation ?? null,
    listOf: async (planId) => list(({ about }) => 'planId' in about && about.planId === planId),
    listOfCampus: async (id) => list(({ about }) => 'campusId' in about && about.campusId === id),
    take: async (lapsesAfter) => {
      const free = ({ explanation: { state }, renewedAt }: (typeof rows)[number]) =>
        state === 'queued' || (state === 'working' && renewedAt < Date.now() - lapsesAfter);
      const row = rows.find(free);
      if (!row) return null;
      const { explanation } = row;
      row.explanation = { ...explanation, state: 'working', attempts: explanation.attempts + 1 };
      [row.holder, row.renewedAt] = [randomUUID(), Date.now()];
      return { lease: { id: explanation.id, holder: row.holder }, explanation: row.explanation };
    },
    renew: async (lease, progress) => change(lease, progress ? { progress } : {}, 'lease'),
    finish: async (lease, closing) =>
      'answer' in closing
        ? change(lease, { ...closing, state: 'done', finishedAt: new Date() }, 'none')
        : change(lease, { ...closing, state: 'failed', finishedAt: new Date() }, 'none'),
    giveBack: async (lease) => {
      const attempts = (held(lease)?.explanation.attempts ?? 1) - 1;
      return change(lease, { state: 'queued', attempts }, 'none');
    },
  };
}
