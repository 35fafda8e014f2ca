import type { LeaseTiming } from '../lease-timing.js';
import type { SolveLease, SolveQueue } from '../ports/solve-queue.js';
import type { SolveProgress } from '../solve-request.js';
import { pause } from './pause.js';

/** Why a running solve was told to stop. */
export type StopReason = 'cancel-wanted' | 'worker-stopping' | 'lease-lost';

export interface KeepLeaseOptions {
  readonly timing: LeaseTiming;
  /** Milliseconds: progress is written at most this often. */
  readonly progressEvery: number;
  /** Aborted when the worker process has to stop. */
  readonly stopping: AbortSignal;
  /** Told of a renewal that could not reach the store; renewing goes on. */
  readonly onError: (error: unknown) => void;
}

/** Renews a lease until stopped, and carries progress one way and the wish to cancel the other. */
export class LeaseKeeper {
  readonly #solve = new AbortController();
  readonly #ended = new AbortController();
  readonly #renewing: Promise<void>;
  #reason: StopReason | null = null;
  #latest: SolveProgress | null = null;
  #renewedAt = Date.now();

  constructor(
    private readonly queue: SolveQueue,
    private readonly lease: SolveLease,
    private readonly options: KeepLeaseOptions,
  ) {
    if (options.stopping.aborted) this.#onStopping();
    else options.stopping.addEventListener('abort', this.#onStopping, { once: true });
    this.#renewing = this.#renewUntilEnded();
  }

  /** Aborted when the solve should stop early. */
  get signal(): AbortSignal {
    return this.#solve.signal;
  }

  /** Takes progress as often as it comes. */
  readonly report = (progress: SolveProgress): void => {
    this.#latest = progress;
  };

  /** Ends the renewing. Answers why the solve was told to stop; null: it was not. */
  async stop(): Promise<StopReason | null> {
    this.options.stopping.removeEventListener('abort', this.#onStopping);
    this.#ended.abort();
    await this.#renewing;
    return this.#reason;
  }

  readonly #onStopping = (): void => this.#stopSolve('worker-stopping');

  /** A lost lease outranks every other reason, since then nothing may be stored. */
  #stopSolve(reason: StopReason): void {
    if (this.#reason === null || reason === 'lease-lost') this.#reason = reason;
    this.#solve.abort();
  }

  async #renewUntilEnded(): Promise<void> {
    const { progressEvery, timing } = this.options;
    while (!this.#ended.signal.aborted && this.#reason !== 'lease-lost') {
      await pause(Math.min(progressEvery, timing.renewEvery), this.#ended.signal);
      if (!this.#ended.signal.aborted && this.#isDue()) await this.#renew();
    }
  }

  #isDue(): boolean {
    return this.#latest !== null || Date.now() - this.#renewedAt >= this.options.timing.renewEvery;
  }

  async #renew(): Promise<void> {
    const progress = this.#latest;
    this.#latest = null;
    try {
      const state = await this.queue.renew(this.lease, progress);
      this.#renewedAt = Date.now();
      if (state === 'lost') this.#stopSolve('lease-lost');
      if (state === 'cancel-wanted') this.#stopSolve('cancel-wanted');
    } catch (error) {
      this.#latest ??= progress;
      this.options.onError(error);
    }
  }
}
