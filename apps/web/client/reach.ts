/** The api could not be reached at all. */
export class OfflineError extends Error {}

let isReached = true;
const listeners = new Set<() => void>();

/** Fetches, and remembers whether the api answered. Throws `OfflineError` where it did not. */
export async function reach(request: Request): Promise<Response> {
  try {
    const response = await fetch(request);
    remember('reached');
    return response;
  } catch {
    remember('lost');
    throw new OfflineError(request.url);
  }
}

/** Whether the last request was answered; for `useSyncExternalStore`. */
export const reachability = {
  isReached: (): boolean => isReached,
  subscribe: (listener: () => void): (() => void) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  },
};

function remember(state: 'reached' | 'lost'): void {
  if (isReached === (state === 'reached')) return;
  isReached = state === 'reached';
  for (const listener of listeners) listener();
}
