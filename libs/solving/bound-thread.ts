/** The thread that proves while another searches; started by `solveInThread`. */
import { workerData } from 'node:worker_threads';
import { boundCampus } from '#optimizer/solve/bound-campus.js';
import { quietSurroundings } from '#optimizer/solve/quiet-surroundings.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import type { ThreadOrder } from './messages.js';
import { partnerAt } from './partner-port.js';

const order = workerData as ThreadOrder;
const stop = new Uint8Array(order.stop);
const solver = await loadHighsSolver();
const began = performance.now();
if (!order.partner) throw new Error('a bounding thread needs a partner');
boundCampus(order.campus, solver, {
  settings: order.settings,
  ...(order.start ? { start: order.start } : {}),
  around: {
    ...quietSurroundings(() => (performance.now() - began) / 1000),
    shouldStop: () => Atomics.load(stop, 0) === 1,
    partner: partnerAt(order.partner),
  },
});
order.partner.close();
