/** Longest time that a process may take over an orderly end, in milliseconds. */
const patience = 15_000;

/**
 * When this process should end: its parent says so or is gone, or it is told by a signal. Ctrl-C at
 * the keyboard reaches every process at once; one that has a parent leaves it to the parent, which
 * stops its children in the right order.
 */
export function endOfProcess(): AbortSignal {
  const end = new AbortController();
  const stop = (): void => {
    if (end.signal.aborted) return;
    end.abort();
    setTimeout(() => process.exit(1), patience).unref();
  };
  const unlessParent = (): void => {
    if (process.send === undefined || !process.connected) stop();
  };
  process.on('message', (message) => {
    if (message === 'stop') stop();
  });
  process.on('disconnect', stop);
  process.on('SIGTERM', stop);
  process.on('SIGINT', unlessParent);
  process.on('SIGHUP', unlessParent);
  return end.signal;
}

/** Resolves when the signal is aborted. */
export function ended(signal: AbortSignal): Promise<void> {
  return new Promise((resolve) => {
    if (signal.aborted) resolve();
    else signal.addEventListener('abort', () => resolve(), { once: true });
  });
}

/** Sends a message to the parent; without one, says it on standard output. */
export function tellParent(message: object): void {
  if (process.send !== undefined && process.connected) process.send(message);
  else console.log(JSON.stringify(message));
}
