import type { LockHolder } from '#persistence/embedded/folder-lock.js';
import { launch } from './child/launch.js';
import { messageOf } from './child/message.js';
import type { SupervisedChild } from './child/supervised-child.js';
import type { StartAdapters, StartOptions } from './start-options.js';
import { lockedExitCode, type StoreMessage } from './store/messages.js';

interface ApiListening {
  readonly kind: 'api-listening';
  readonly port: number;
}

interface SolverReady {
  readonly kind: 'solver-ready';
}

/** The store's folder is in use by another process. */
export class StoreHeldError extends Error {
  constructor(readonly holder: LockHolder | null) {
    super('the store is already open');
  }
}

/** The child processes of one `npm start`, stopped in the opposite order of their start. */
export class Processes {
  readonly #started: SupervisedChild[] = [];

  constructor(
    private readonly programs: StartAdapters['programs'],
    private readonly options: StartOptions,
    /** Told when one of them ended for good: the others are of no use without it. */
    private readonly onGivenUp: (reason: string) => void,
  ) {}

  /** The address of the database: the given one, or that of the embedded store, started now. */
  async openStore(): Promise<string> {
    const { databaseUrl, storeFolder } = this.options;
    if (databaseUrl !== undefined) return databaseUrl;
    const { child, ready } = launch<StoreMessage>({
      ...this.#common,
      name: 'the store',
      module: this.programs.store,
      args: [storeFolder],
      finalExitCodes: [lockedExitCode],
      readyOf: (message) => messageOf(message, 'store-open', 'store-held-by-another'),
    });
    this.#started.push(child);
    const answer = await ready;
    if (answer.kind === 'store-held-by-another') throw new StoreHeldError(answer.holder);
    return answer.url;
  }

  /** The port that the api chose. It keeps that port when it is started again. */
  async openApi(databaseUrl: string): Promise<number> {
    const { host, port } = this.options;
    let chosen = port;
    const { child, ready } = launch<ApiListening>({
      ...this.#common,
      name: 'the api',
      module: this.programs.api,
      env: () => ({ DATABASE_URL: databaseUrl, HOST: host, PORT: String(chosen) }),
      readyOf: (message) => messageOf(message, 'api-listening'),
    });
    this.#started.push(child);
    chosen = (await ready).port;
    return chosen;
  }

  async openSolver(databaseUrl: string): Promise<void> {
    const { child, ready } = launch<SolverReady>({
      ...this.#common,
      name: 'the solver',
      module: this.programs.solver,
      env: () => ({ DATABASE_URL: databaseUrl }),
      readyOf: (message) => messageOf(message, 'solver-ready'),
    });
    this.#started.push(child);
    await ready;
  }

  async stopAll(): Promise<void> {
    for (const child of [...this.#started].reverse()) await child.stop();
  }

  get #common() {
    return { onGivenUp: this.onGivenUp, stopping: this.options.stopping };
  }
}
