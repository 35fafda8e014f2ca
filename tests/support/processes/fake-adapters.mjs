/**
 * Adapters for tests of whole processes: they run from dist/ like the program, and take the place of
 * the planning core. A campus document says itself how it wants to be "solved":
 * `{ name, solveMilliseconds, problems? }`.
 */
import { setTimeout as sleep } from 'node:timers/promises';

export const timing = { renewEvery: 250, lapsesAfter: 2_500, sweepEvery: 300 };

export const reader = {
  read: (document) =>
    typeof document?.name === 'string'
      ? { ok: true, name: document.name, document, warnings: [] }
      : { ok: false, problems: [nameless] },
};

const nameless = {
  code: 'NAME-MISSING',
  record: 'campus',
  field: 'name',
  value: null,
  problem: 'The campus has no name.',
  remedy: 'Give it one.',
  severity: 'error',
};

export const checker = {
  check: async (_campus, plan) =>
    plan.kind === 'fake plan'
      ? { verified: true, breaches: [] }
      : {
          verified: false,
          breaches: [{ rule: 'fake', record: 'plan', message: 'not a fake plan' }],
        },
};

export const overview = { of: async (campus) => ({ headline: `Next: ${campus.name}` }) };

export const headline = (shown) => [shown.headline];

export const writer = {
  list: async () => [
    {
      kind: 'administration-brief',
      title: 'Administration brief',
      fileName: 'administration-brief.pdf',
    },
  ],
  write: async ({ overview: shown }, fileName) => ({
    kind: 'administration-brief',
    fileName,
    mediaType: 'application/pdf',
    bytes: new TextEncoder().encode(`%PDF-1.7 ${shown.headline}`),
  }),
};

export const solving = {
  async solve({ requestId, campus, seed }, { onProgress, signal }) {
    const until = Date.now() + campus.solveMilliseconds;
    for (let elapsed = 0; Date.now() < until && !signal.aborted; elapsed += 0.05) {
      onProgress(progressAfter(elapsed));
      await sleep(50);
    }
    const ending = signal.aborted ? 'cancelled' : 'proven';
    const plan = { kind: 'fake plan', requestId, seed, worker: process.pid };
    return { ending, plan, solverVersion: 'fake 1', conflict: [] };
  },
};

function progressAfter(elapsedSeconds) {
  const known = { bestObjective: 100, bound: 110, gap: 0.1, tier: 'benefit' };
  return { elapsedSeconds, ...known, message: `best plan so far by worker ${process.pid}` };
}
