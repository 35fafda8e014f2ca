import { Worker } from 'node:worker_threads';
import type { ResolveAnswer, ResolveOrder, Resolver } from '#optimizer/resolve/order.js';
import { builtScript } from './built-script.js';
import { MOST_THREADS } from './thread-limits.js';

/** Seconds past its limit after which an order is given up and its thread ended. */
const OVERTIME_SECONDS = 1;

/** A resolver that owns threads; closing it ends them. */
export interface ResolverPool extends Resolver {
  close(): Promise<void>;
}

export interface PoolOptions {
  /** Seconds until the question has to be answered. Left out: no limit. */
  readonly seconds?: number;
  readonly signal?: AbortSignal;
}

interface Job {
  readonly order: ResolveOrder;
  readonly resolve: (answer: ResolveAnswer) => void;
  readonly reject: (error: Error) => void;
}

const GIVEN_UP: ResolveAnswer = {
  ending: 'not-found',
  values: [],
  bounds: [],
  rounds: 0,
  seconds: 0,
};

/** Opens threads that answer orders side by side. Orders left when time is over are not begun. */
export function openResolverPool(options: PoolOptions = {}): ResolverPool {
  return new Pool(options);
}

class Pool implements ResolverPool {
  readonly parallel = MOST_THREADS;
  private readonly began = performance.now();
  private readonly threads = new Set<Worker>();
  private readonly idle: Worker[] = [];
  private readonly waiting: Job[] = [];

  constructor(private readonly options: PoolOptions) {
    for (let i = 0; i < this.parallel; i++) this.idle.push(this.open());
  }

  secondsLeft(): number {
    if (this.options.signal?.aborted) return 0;
    return (this.options.seconds ?? Infinity) - (performance.now() - this.began) / 1000;
  }

  resolve(
    orders: readonly ResolveOrder[],
    onAnswer: (place: number, answer: ResolveAnswer) => void = () => undefined,
  ): Promise<ResolveAnswer[]> {
    return Promise.all(
      orders.map(async (order, place) => {
        const answer = await new Promise<ResolveAnswer>((resolve, reject) => {
          this.waiting.push({ order, resolve, reject });
          this.next();
        });
        onAnswer(place, answer);
        return answer;
      }),
    );
  }

  async close(): Promise<void> {
    const all = [...this.threads];
    this.threads.clear();
    await Promise.all(all.map((thread) => thread.terminate()));
  }

  private open(): Worker {
    const thread = new Worker(builtScript('resolve-thread.js'));
    this.threads.add(thread);
    return thread;
  }

  private next(): void {
    const job = this.waiting[0];
    if (!job) return;
    if (this.secondsLeft() <= 0) {
      this.waiting.shift();
      job.resolve(GIVEN_UP);
      return this.next();
    }
    const thread = this.idle.pop();
    if (!thread) return;
    this.waiting.shift();
    this.run(job, thread);
  }

  private run({ order, resolve, reject }: Job, thread: Worker): void {
    const left = Math.min(this.secondsLeft(), order.seconds ?? Infinity);
    const limited = Number.isFinite(left) ? { ...order, seconds: Math.max(0, left) } : order;
    const end = () => {
      clearTimeout(timer);
      thread.removeAllListeners('message');
      thread.removeAllListeners('error');
    };
    const timer = Number.isFinite(left)
      ? setTimeout(
          () => {
            end();
            this.threads.delete(thread);
            void thread.terminate();
            if (this.secondsLeft() > 0) this.idle.push(this.open());
            resolve(GIVEN_UP);
            this.next();
          },
          (left + OVERTIME_SECONDS) * 1000,
        )
      : undefined;
    thread.once('message', (answer: ResolveAnswer) => {
      end();
      this.idle.push(thread);
      resolve(answer);
      this.next();
    });
    thread.once('error', (error) => {
      end();
      reject(error);
    });
    thread.postMessage(limited);
  }
}
