import { api, OfflineError, type SolveProgress, type SolveView } from '../api.js';

interface Watcher {
  readonly onView: (view: SolveView | ((before: SolveView | null) => SolveView | null)) => void;
  readonly onTouch: (inTouch: boolean) => void;
}

const LOOK_AGAIN_MS = 2_000;

/**
 * Follows one solve by its server-sent events, and asks for its state when the stream opens, ends
 * or breaks: a solve can end while nobody listens. Returns what stops the watch.
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

  const look = async (): Promise<void> => {
    clearTimeout(timer);
    try {
      const view = await api.solve(solveId);
      if (isOver) return;
      watcher.onTouch(true);
      watcher.onView(view);
      if (view.state !== 'queued' && view.state !== 'solving') return stop();
    } catch (error) {
      if (isOver) return;
      watcher.onTouch(!(error instanceof OfflineError));
    }
    if (events.readyState !== EventSource.OPEN) timer = setTimeout(() => void look(), LOOK_AGAIN_MS);
  };

  const onProgress = (event: MessageEvent<string>): void => {
    const progress = JSON.parse(event.data) as SolveProgress;
    watcher.onView((before) => before && { ...before, state: 'solving', progress });
  };

  events.addEventListener('progress', onProgress);
  events.addEventListener('ended', () => void look());
  events.addEventListener('error', () => void look());
  return stop;
}
