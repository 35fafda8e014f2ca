/** A thread that meets one order of futures after another; started by `openFuturesPool`. */
import { parentPort } from 'node:worker_threads';
import { meeterOf, type Meeter } from '#futures/meet-futures.js';
import type { Faced, FuturesOrder } from '#futures/order.js';

/** An order; the campus and plan come with the first of those that share them. */
export interface FuturesMessage {
  readonly faced?: Faced;
  readonly order: Omit<FuturesOrder, keyof Faced>;
}

let meet: Meeter | undefined;

parentPort?.on('message', ({ faced, order }: FuturesMessage) => {
  if (faced) meet = meeterOf(faced);
  if (!meet) throw new Error('an order of futures came without its plan');
  parentPort?.postMessage(meet(order));
});
