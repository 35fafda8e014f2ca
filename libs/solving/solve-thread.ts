/** The thread in which one campus is solved; started by `solveInThread`. */
import { parentPort, workerData } from 'node:worker_threads';
import { solveCampus } from '#optimizer/solve/solve-campus.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import type { ThreadMessage, ThreadOrder } from './messages.js';
import { partnerAt } from './partner-port.js';

const order = workerData as ThreadOrder;
const stop = new Uint8Array(order.stop);
const tell = (message: ThreadMessage) => parentPort?.postMessage(message);

const solver = await loadHighsSolver();
tell({ kind: 'started', solverName: solver.name, solverVersion: solver.version });
const began = performance.now();
const result = solveCampus(order.campus, solver, {
  settings: order.settings,
  ...(order.start ? { start: order.start } : {}),
  around: {
    elapsed: () => (performance.now() - began) / 1000,
    shouldStop: () => Atomics.load(stop, 0) === 1,
    ...(order.partner ? { partner: partnerAt(order.partner) } : {}),
    onProgress: (progress) => tell({ kind: 'progress', progress }),
    onNoPlan: (conflict) => tell({ kind: 'no-plan', conflict }),
    onPlan: (plan, values) => tell({ kind: 'plan', plan, values }),
  },
});
tell({ kind: 'result', result });
