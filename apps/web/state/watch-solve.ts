import { api, OfflineError, SOLVE_EVENT, type Solve } from '../api.js';

interface Watcher {
  readonly onSolve: (solve: Solve) => void;
  /** Told whether the api still answers. */
  readonly onTouch: (isInTouch: boolean) => void;
}

const LOOK_AGAIN_MS = 2_000;

/** True while a solve may still change. */
export function isActive({ state }: Solve): boolean {
  return state === 'queued' || state === 'solving';
}

/**
 * Follows one solve by its stream of events, and asks for its state whenever the stream breaks: a
 * solve can end while nobody listens. Returns what stops the watch.
 */
export function watchSolve(solveId: string, watcher: Watcher): () => void {
  const events = new EventSource(api.solveEventsPath(solveId));
  let timer: ReturnType<typeof setTimeout> | undefined;
  let isOver = false;

  const stop = (): void => {
    isOver = true;
    clearTimeout(timer);
    events.close();
  };

  const see = (solve: Solve): void => {
    watcher.onTouch(true);
    watcher.onSolve(solve);
    if (!isActive(solve)) stop();
  };

  const look = async (): Promise<void> => {
    clearTimeout(timer);
    try {
      const solve = await api.solve(solveId);
      if (!isOver) see(solve);
    } catch (error) {
      if (!isOver) watcher.onTouch(!(error instanceof OfflineError));
    }
    const isSilent = events.readyState !== EventSource.OPEN;
    if (!isOver && isSilent) timer = setTimeout(() => void look(), LOOK_AGAIN_MS);
  };

  events.addEventListener(SOLVE_EVENT, ({ data }: MessageEvent<string>) => {
    see(JSON.parse(data) as Solve);
  });
  events.addEventListener('error', () => void look());
  return stop;
}
