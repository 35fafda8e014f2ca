/** Longest time that a process may take over an orderly end, in milliseconds. */
const patience = 10_000;

/** The same when the parent is gone: the store may be gone with it, and nobody waits. */
const orphanPatience = 3_000;

/** When this process should end: its parent says so or is gone, or it is told by a signal. */
export function endOfProcess(): AbortSignal {
  const end = new AbortController();
  const stopWithin = (milliseconds: number): void => {
    setTimeout(() => process.exit(1), milliseconds).unref();
    end.abort();
  };
  const stop = (): void => stopWithin(patience);
  const stopAlone = (): void => stopWithin(orphanPatience);
  process.on('message', (message) => {
    if (message === 'stop') stop();
  });
  process.on('disconnect', stopAlone);
  for (const name of ['SIGTERM', 'SIGINT', 'SIGHUP'] as const) process.on(name, stop);
  // The parent may have gone while this process was still loading.
  if (process.connected === false) stopAlone();
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
