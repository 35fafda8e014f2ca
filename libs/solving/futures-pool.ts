import { Worker } from 'node:worker_threads';
import type { Faced, FutureRunner, FuturesOrder } from '#futures/order.js';
import type { Outcome } from '#futures/stress/outcome.js';
import { builtScript } from './built-script.js';
import type { FuturesMessage } from './futures-thread.js';
import type { PoolOptions } from './resolver-pool.js';
import { MOST_THREADS } from './thread-limits.js';

/** A runner that owns threads; closing it ends them. */
export interface FuturesPool extends FutureRunner {
  close(): Promise<void>;
}

/**
 * Opens threads that meet futures side by side. Orders left when time is over are not begun, but for
 * the first: shares of no future at all are no numbers.
 */
export function openFuturesPool(
  options: PoolOptions & { readonly threads?: number } = {},
): FuturesPool {
  const count = options.threads ?? MOST_THREADS;
  const ends = performance.now() + (options.seconds ?? Infinity) * 1000;
  let begun = false;
  const mayBegin = () => {
    if (options.signal?.aborted || (begun && performance.now() >= ends)) return false;
    begun = true;
    return true;
  };
  const lanes = Array.from({ length: count }, (): Lane => ({
    thread: new Worker(builtScript('futures-thread.js')),
    last: Promise.resolve(),
    waiting: 0,
  }));
  return {
    parallel: count,
    run(order) {
      const lane = lanes.reduce((least, l) => (l.waiting < least.waiting ? l : least));
      lane.waiting += 1;
      const next = lane.last.then(() => (mayBegin() ? met(lane, order) : undefined));
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

interface Lane {
  readonly thread: Worker;
  last: Promise<unknown>;
  waiting: number;
  /** What the thread has been told of already. */
  faced?: Faced;
}

/** The order as a message, with campus and plan where the thread does not have them. */
function messageOf(lane: Lane, { campus, plan, ...order }: FuturesOrder): FuturesMessage {
  if (lane.faced?.campus === campus && lane.faced.plan === plan) return { order };
  lane.faced = { campus, plan };
  return { faced: lane.faced, order };
}

function met(lane: Lane, order: FuturesOrder): Promise<readonly Outcome[]> {
  const { thread } = lane;
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
    thread.postMessage(messageOf(lane, order));
  });
}
