import { fork, type ChildProcess } from 'node:child_process';

export interface ChildPlan {
  /** For messages to people: "the solver". */
  readonly name: string;
  readonly module: string;
  readonly args?: readonly string[];
  /** Added to this process's environment; asked for at every start. */
  readonly env?: () => Readonly<Record<string, string>>;
  /** Exit codes after which starting it again would not help. */
  readonly finalExitCodes?: readonly number[];
  readonly onMessage: (message: unknown) => void;
  /** The child ended for good although nobody stopped it. */
  readonly onGivenUp: (reason: string) => void;
}

/** Milliseconds before a child is started again; more each time that it ended before it was ready. */
const firstWait = 200;
const longestWait = 5_000;
const mostFailedStarts = 6;

/** A child process that is started again whenever it ends, until it is stopped. */
export class SupervisedChild {
  #child: ChildProcess | null = null;
  #waiting: NodeJS.Timeout | undefined;
  #stopping = false;
  #failedStarts = 0;

  constructor(private readonly plan: ChildPlan) {}

  /** Null while it is being started again. */
  get pid(): number | null {
    return this.#child?.pid ?? null;
  }

  start(): void {
    const { args = [], env, module, onMessage } = this.plan;
    const child = fork(module, [...args], {
      // In a group of its own, so that Ctrl-C at the keyboard reaches the parent alone.
      detached: true,
      env: { ...process.env, ...env?.() },
      stdio: ['ignore', 'inherit', 'inherit', 'ipc'],
    });
    this.#child = child;
    // The first message is the child's word that it is ready, so this start did not fail.
    child.on('message', (message) => {
      this.#failedStarts = 0;
      onMessage(message);
    });
    child.on('error', (error) => console.error(`${this.plan.name}: ${error.message}`));
    child.on('exit', (code, signal) => {
      this.#child = null;
      if (!this.#stopping) this.#onEnd(code, signal);
    });
  }

  /** Tells the child to stop and waits for its end; after `patience` milliseconds it is killed. */
  async stop(patience = 10_000): Promise<void> {
    this.#stopping = true;
    clearTimeout(this.#waiting);
    const child = this.#child;
    if (child === null) return;
    const gone = new Promise<void>((resolve) => child.once('exit', () => resolve()));
    // A child that ends at this moment can no longer be told, and need not be.
    if (child.connected) child.send('stop', () => undefined);
    const kill = setTimeout(() => child.kill('SIGKILL'), patience);
    await gone;
    clearTimeout(kill);
  }

  #onEnd(code: number | null, signal: string | null): void {
    const how = signal ?? `exit code ${code}`;
    const isFinal = code !== null && this.plan.finalExitCodes?.includes(code) === true;
    this.#failedStarts += 1;
    if (isFinal || this.#failedStarts > mostFailedStarts) {
      this.plan.onGivenUp(`${this.plan.name} ended (${how})`);
      return;
    }
    const wait = Math.min(firstWait * 2 ** (this.#failedStarts - 1), longestWait);
    console.error(`${this.plan.name} ended (${how}) and is started again`);
    this.#waiting = setTimeout(() => this.start(), wait);
  }
}
