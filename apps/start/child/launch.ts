import { SupervisedChild, type ChildPlan } from './supervised-child.js';

export interface Launched<T> {
  readonly child: SupervisedChild;
  /** The child's first message; rejects when the child is given up or everything stops before. */
  readonly ready: Promise<T>;
}

export interface LaunchOptions<T> extends Omit<ChildPlan, 'onMessage' | 'onGivenUp'> {
  /** Recognizes the message by which the child says that it is ready. */
  readonly readyOf: (message: unknown) => T | undefined;
  readonly onGivenUp: (reason: string) => void;
  readonly stopping: AbortSignal;
}

/** Everything was told to stop while something was still starting. */
export class StoppedEarlyError extends Error {}

/** Starts a supervised child and waits for its word that it is ready. */
export function launch<T>(options: LaunchOptions<T>): Launched<T> {
  const { readyOf, stopping, onGivenUp, ...plan } = options;
  const { promise, resolve, reject } = deferred<T>();
  stopping.addEventListener('abort', () => reject(new StoppedEarlyError()), { once: true });
  const child = new SupervisedChild({
    ...plan,
    onMessage: (message) => {
      const ready = readyOf(message);
      if (ready !== undefined) resolve(ready);
    },
    onGivenUp: (reason) => {
      reject(new Error(reason));
      onGivenUp(reason);
    },
  });
  child.start();
  promise.catch(() => undefined);
  return { child, ready: promise };
}

function deferred<T>(): {
  promise: Promise<T>;
  resolve: (value: T) => void;
  reject: (error: Error) => void;
} {
  let resolve: (value: T) => void = () => undefined;
  let reject: (error: Error) => void = () => undefined;
  const promise = new Promise<T>((onResolve, onReject) => {
    resolve = onResolve;
    reject = onReject;
  });
  return { promise, resolve, reject };
}
