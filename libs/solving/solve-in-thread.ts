import { MessageChannel, type MessagePort, type Worker } from 'node:worker_threads';
import type { Campus } from '#domain/campus.js';
import type { Decisions, Plan } from '#domain/plan.js';
import type { ConflictMember } from '#domain/tier.js';
import { reportCutShort } from '#optimizer/solve/cut-short.js';
import type { SolveProgress, SolveSettings } from '#optimizer/solve/settings.js';
import type { SolveResult } from '#optimizer/solve/solve-campus.js';
import type { ThreadMessage, ThreadOrder } from './messages.js';
import { readyThreads, type Threads } from './ready-threads.js';
import { GRACE_SECONDS, MOST_THREADS } from './thread-limits.js';

export type { SolveProgress, SolveSettings } from '#optimizer/solve/settings.js';

/** Seconds past its time limit after which a thread that did not answer is ended. */
const OVERTIME_SECONDS = 5;

export interface ThreadHooks {
  /** Decisions of an earlier plan to begin from. */
  readonly start?: Decisions;
  readonly signal?: AbortSignal;
  readonly onProgress?: (progress: SolveProgress) => void;
  /** A verified plan that is better than any before. */
  readonly onPlan?: (plan: Plan, values: readonly number[]) => void;
  /** Left out: those that are kept ready. */
  readonly threads?: Threads;
}

export interface ThreadResult extends SolveResult {
  readonly solverName: string;
  readonly solverVersion: string;
}

/**
 * Solves a campus in a thread of its own, so that the caller stays awake. When the signal aborts, or
 * the time is over and the thread does not answer, the thread is ended and the best verified plan it
 * had told is the result. A thread that fails is a defect: the solve rejects where it is the one that
 * searches, and warns and goes on without a proof where it is the one that proves beside it.
 */
export function solveInThread(
  campus: Campus,
  settings: SolveSettings,
  hooks: ThreadHooks = {},
): Promise<ThreadResult> {
  return new ThreadSolve(campus, settings, hooks).run();
}

class ThreadSolve {
  private readonly stop = new SharedArrayBuffer(1);
  private readonly threads: Threads;
  private readonly workers: readonly Worker[];
  private conflict: readonly ConflictMember[] | undefined;
  private best: { plan: Plan; values: readonly number[] } | undefined;
  private solver = { solverName: 'none', solverVersion: 'not started' };
  private readonly timers: NodeJS.Timeout[] = [];
  private readonly listening: (() => void)[] = [];
  /** Whether the searching thread gave its result itself, so that it may be kept. */
  private answered = false;

  constructor(
    private readonly campus: Campus,
    private readonly settings: SolveSettings,
    private readonly hooks: ThreadHooks,
  ) {
    this.threads = hooks.threads ?? readyThreads;
    if (threadsFor(settings) === 1) {
      this.workers = [this.ordered('search')];
      return;
    }
    const { port1, port2 } = new MessageChannel();
    this.workers = [this.ordered('search', port1), this.ordered('proof', port2)];
  }

  private ordered(part: ThreadOrder['part'], partner?: MessagePort): Worker {
    const { campus, settings, stop } = this;
    const { start } = this.hooks;
    const order: ThreadOrder = {
      part,
      campus,
      settings,
      stop,
      ...(start ? { start } : {}),
      ...(partner ? { partner } : {}),
    };
    const thread = this.threads.take();
    thread.postMessage(order, partner ? [partner] : []);
    return thread;
  }

  async run(): Promise<ThreadResult> {
    try {
      const result = await new Promise<SolveResult>((resolve, reject) => {
        const [main, proving] = this.workers;
        this.listen(main, 'message', (message: ThreadMessage) => this.take(message, resolve));
        this.listen(main, 'exit', (code: number) =>
          reject(new Error(`the solving thread ended with code ${code}`)),
        );
        this.listen(main, 'error', reject);
        this.listen(proving, 'error', warnOfProof);
        this.armTimers(resolve);
      });
      return { ...result, ...this.solver };
    } finally {
      for (const timer of this.timers) clearTimeout(timer);
      for (const stopListening of this.listening) stopListening();
      Atomics.store(new Uint8Array(this.stop), 0, 1);
      if (this.answered) this.workers.forEach(this.threads.giveBack);
      else await Promise.all(this.workers.map((worker) => worker.terminate()));
    }
  }

  private listen<T>(worker: Worker | undefined, event: string, listener: (of: T) => void): void {
    worker?.on(event, listener);
    this.listening.push(() => worker?.off(event, listener));
  }

  private take(message: ThreadMessage, resolve: (result: SolveResult) => void): void {
    switch (message.kind) {
      case 'started':
        this.solver = { solverName: message.solverName, solverVersion: message.solverVersion };
        return;
      case 'progress':
        this.hooks.onProgress?.(message.progress);
        return;
      case 'plan':
        this.best = { plan: message.plan, values: message.values };
        this.hooks.onPlan?.(message.plan, message.values);
        return;
      case 'no-plan':
        this.conflict = message.conflict;
        return;
      case 'result':
        this.answered = true;
        resolve(message.result);
        return;
      case 'idle':
    }
  }

  private armTimers(resolve: (result: SolveResult) => void): void {
    const { seconds } = this.settings;
    const cut = (why: 'time-limit' | 'cancelled') => resolve(this.cutShort(why));
    if (seconds !== undefined) {
      this.timers.push(setTimeout(() => cut('time-limit'), (seconds + OVERTIME_SECONDS) * 1000));
    }
    const abort = () => {
      Atomics.store(new Uint8Array(this.stop), 0, 1);
      this.timers.push(setTimeout(() => cut('cancelled'), GRACE_SECONDS * 1000));
    };
    if (this.hooks.signal?.aborted) abort();
    else this.hooks.signal?.addEventListener('abort', abort, { once: true });
  }

  private cutShort(why: 'time-limit' | 'cancelled'): SolveResult {
    if (this.conflict) return { report: { ending: 'no-plan', tiers: [], conflict: this.conflict } };
    if (!this.best) return { report: { ending: `${why}-without-plan`, tiers: [], conflict: [] } };
    const report = reportCutShort(this.campus, this.best.values, why);
    return { report, plan: this.best.plan };
  }
}

function warnOfProof(error: Error): void {
  process.emitWarning(`a proof ended early, and its solve went on without it: ${error.message}`, {
    type: 'DefectWarning',
    ...(error.stack === undefined ? {} : { detail: error.stack }),
  });
}

/** Two threads where time is limited and there are cores for both; repeatable runs use one. */
function threadsFor({ threads, seconds, work }: SolveSettings): 1 | 2 {
  if (threads !== undefined) return threads;
  return seconds !== undefined && work === undefined && MOST_THREADS > 1 ? 2 : 1;
}
