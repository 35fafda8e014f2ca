/** A thread that answers one re-solve after another; started by `openResolverPool`. */
import { parentPort } from 'node:worker_threads';
import type { ResolveOrder } from '#optimizer/resolve/order.js';
import { resolveOrder } from '#optimizer/resolve/resolve-order.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';

const solver = await loadHighsSolver();
parentPort?.on('message', (order: ResolveOrder) => {
  const began = performance.now();
  const elapsed = () => (performance.now() - began) / 1000;
  parentPort?.postMessage(resolveOrder(order, { solver, elapsed }));
});
