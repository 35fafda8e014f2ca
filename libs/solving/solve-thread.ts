/** A thread that does one order after another, each a part of the solve of one campus; started by `ready-threads`. */
import { parentPort } from 'node:worker_threads';
import { boundCampus } from '#optimizer/solve/bound-campus.js';
import { quietSurroundings } from '#optimizer/solve/quiet-surroundings.js';
import type { SolveRun } from '#optimizer/solve/settings.js';
import { solveCampus } from '#optimizer/solve/solve-campus.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import type { ThreadMessage, ThreadOrder } from './messages.js';
import { partnerAt } from './partner-port.js';

/** Bytes of a thread that is kept for another solve, at the most. */
const MOST_KEPT_BYTES = 256 * 2 ** 20;

const solver = await loadHighsSolver();
const tell = (message: ThreadMessage) => parentPort?.postMessage(message);

parentPort?.on('message', (order: ThreadOrder) => {
  if (order.part === 'proof') prove(order);
  else search(order);
  const { heapTotal, external } = process.memoryUsage();
  // What a solver has taken it never gives back: a thread that has grown large says nothing, and is ended.
  if (heapTotal + external <= MOST_KEPT_BYTES) tell({ kind: 'idle' });
});

/** Finds plans, and tells all that the solve finds. */
function search(order: ThreadOrder): void {
  tell({ kind: 'started', solverName: solver.name, solverVersion: solver.version });
  const { around, ...run } = runOf(order);
  const result = solveCampus(order.campus, solver, {
    ...run,
    around: {
      ...around,
      onProgress: (progress) => tell({ kind: 'progress', progress }),
      onNoPlan: (conflict) => tell({ kind: 'no-plan', conflict }),
      onPlan: (plan, values) => tell({ kind: 'plan', plan, values }),
    },
  });
  tell({ kind: 'result', result });
}

/** Proves beside a thread that searches, and tells that one alone. */
function prove(order: ThreadOrder): void {
  boundCampus(order.campus, solver, runOf(order));
  order.partner?.close();
}

function runOf({ settings, start, stop, partner }: ThreadOrder): SolveRun {
  const asked = new Uint8Array(stop);
  const began = performance.now();
  return {
    settings,
    ...(start ? { start } : {}),
    around: {
      ...quietSurroundings(() => (performance.now() - began) / 1000),
      shouldStop: () => Atomics.load(asked, 0) === 1,
      ...(partner ? { partner: partnerAt(partner) } : {}),
    },
  };
}
