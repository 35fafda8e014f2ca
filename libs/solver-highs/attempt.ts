/** What a run tells; `undefined` where the solver gives it up with an error. */
export function attempt<T>(run: () => T): T | undefined {
  try {
    return run();
  } catch (error) {
    if ((error as { operation?: unknown }).operation === 'run') return undefined;
    throw error;
  }
}
