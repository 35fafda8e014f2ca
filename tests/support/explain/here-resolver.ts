import type { Resolver } from '#optimizer/resolve/order.js';
import { resolveOrder } from '#optimizer/resolve/resolve-order.js';
import type { Solver } from '#mip/solver.js';

/** Answers orders one after the other in this thread, with no limit of time. */
export function hereResolver(solver: Solver): Resolver {
  return {
    parallel: 1,
    secondsLeft: () => Infinity,
    resolve: async (orders, onAnswer = () => undefined) =>
      orders.map((order, place) => {
        const answer = resolveOrder(order, { solver, elapsed: () => 0 });
        onAnswer(place, answer);
        return answer;
      }),
  };
}
