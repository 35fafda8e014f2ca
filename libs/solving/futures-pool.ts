import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { FutureRunner, FuturesOrder } from '#futures/order.js';
import type { Outcome } from '#futures/stress/outcome.js';
import { builtScript } from './built-script.js';
import type { PoolOptions } from './resolver-pool.js';

/** Threads at the most; more would only wait for the same cores on common machines. */
const MOST_THREADS = 2;

/** A runner that owns threads; closing it ends them. */
export interface FuturesPool extends FutureRunner {
  close(): Promise<void>;
}

/** Opens threads that meet futures side by side. Orders left when time is over are not begun. */
export function openFuturesPool(
  options: PoolOptions & { readonly threads?: number } = {},
): FuturesPool {
  const count = options.threads ?? Math.max(1, Math.min(MOST_THREADS, availableParallelism()));
  const ends = performance.now() + (options.seconds ?? Infinity) * 1000;
  const isOver = () => options.signal?.aborted === true || performance.now() >= ends;
  const lanes = Array.from({ length: count }, () => ({
    thread: new Worker(builtScript('futures-thread.js')),
    last: Promise.resolve<unknown>(undefined),
    waiting: 0,
  }));
  return {
    parallel: count,
    run(order) {
      const lane = lanes.reduce((least, l) => (l.waiting < least.waiting ? l : least));
      lane.waiting += 1;
      const next = lane.last.then(() => (isOver() ? undefined : met(lane.thread, order)));
      lane.last = next.then(
        () => (lane.waiting -= 1),
        () => undefined,
      );
      return next;
    },
    async close() {
      await Promise.all(lanes.map(({ thread }) => thread.terminate()));
    },
  };
}

function met(thread: Worker, order: FuturesOrder): Promise<readonly Outcome[]> {
  return new Promise((resolve, reject) => {
    const end = () => {
      thread.removeAllListeners('message');
      thread.removeAllListeners('error');
    };
    thread.once('message', (outcomes: readonly Outcome[]) => {
      end();
      resolve(outcomes);
    });
    thread.once('error', (error) => {
      end();
      reject(error);
    });
    thread.postMessage(order);
  });
}
