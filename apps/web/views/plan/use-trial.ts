import { useCallback, useEffect, useRef, useState } from 'react';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { api, type HandPlacement, type Solve } from '../../api.js';
import { useDeskState, type PlanContent } from '../../state/desk-context.js';
import { useKept } from '../../state/use-kept.js';
import { failureOf, type Failure } from '../../state/use-loaded.js';
import { watchSolve } from '../../state/watch-solve.js';

/** Seconds that a re-solve from the plan on the desk may take. */
const TRIAL_SECONDS = 6;

/** Seconds for one that found no plan in that time. */
const LONGER_SECONDS = 60;

/** A change by hand as it is tried out. */
export type Trial =
  | { readonly kind: 'none' }
  | { readonly kind: 'saving' }
  | { readonly kind: 'solving'; readonly solve: Solve; readonly isOutOfTouch: boolean }
  | { readonly kind: 'solved'; readonly solve: Solve; readonly after: PlanOverview | null }
  | { readonly kind: 'undone' }
  | { readonly kind: 'failed'; readonly failure: Failure };

export interface TrialControl {
  readonly trial: Trial;
  /** The plan that the trial began from. */
  readonly before: PlanOverview;
  readonly canUndo: boolean;
  readonly start: (site: string, placements: readonly HandPlacement[]) => void;
  readonly stop: () => void;
  /** Solves once more with what was changed, and takes longer. */
  readonly longer: () => void;
  readonly undo: () => void;
  /** The trial is over; it can still be undone. */
  readonly settle: () => void;
}

/** What undoes the last change, kept in the browser so that a reload does not lose it. */
interface Undo {
  readonly site: string;
  readonly version: number;
  readonly before: readonly HandPlacement[];
  readonly planId: string;
}

/** Places a site by hand, solves again from the plan on the desk, and undoes it when told. */
export function useTrial({ campus, plan, overview }: PlanContent): TrialControl {
  const { goTo, refresh } = useDeskState();
  const [trial, setTrial] = useState<Trial>({ kind: 'none' });
  const [before, setBefore] = useState(overview);
  const [undoable, setUndoable] = useKept<Undo>(`undo of ${campus.id}`);
  const stopWatching = useRef<() => void>(() => undefined);
  useEffect(() => () => stopWatching.current(), []);

  const follow = useCallback((solve: Solve) => {
    setTrial({ kind: 'solving', solve, isOutOfTouch: false });
    stopWatching.current = watchSolve(solve.id, {
      onSolve: (now) => void see(now, setTrial),
      onTouch: (isInTouch) =>
        setTrial((old) => (old.kind === 'solving' ? { ...old, isOutOfTouch: !isInTouch } : old)),
    });
  }, []);

  const fail = useFail(setTrial);

  const start = useCallback(
    (site: string, placements: readonly HandPlacement[]) => {
      const act = async (): Promise<void> => {
        const change = { basedOn: campus.version, handPlacements: placements };
        const saved = await api.placeByHand({ id: campus.id, site }, change);
        const before = saved.before as readonly HandPlacement[];
        setUndoable({ site, version: saved.campus.version, before, planId: plan.id });
        refresh();
        const wish = { seconds: TRIAL_SECONDS, startFromPlan: plan.id };
        follow(await api.startSolve(campus.id, wish));
      };
      setTrial({ kind: 'saving' });
      setBefore(overview);
      act().catch(fail);
    },
    [campus, plan, overview, fail, follow, refresh, setUndoable],
  );

  const undo = useCallback(() => {
    if (undoable === null) return;
    const { site, version, before, planId } = undoable;
    stopWatching.current();
    api
      .placeByHand({ id: campus.id, site }, { basedOn: version, handPlacements: before })
      .then(() => {
        setUndoable(null);
        setTrial({ kind: 'undone' });
        goTo({ planId });
        refresh();
      }, fail);
  }, [campus.id, undoable, setUndoable, goTo, fail, refresh]);

  const stop = useStop(trial, setTrial);
  const longer = useLonger({ campusId: campus.id, planId: plan.id, tell: setTrial, follow, fail });
  const settle = useCallback(() => setTrial({ kind: 'none' }), []);
  return { trial, before, canUndo: undoable !== null, start, stop, longer, undo, settle };
}

/** Loads the campus anew, too: where it was another's change, the next try builds on that. */
function useFail(tell: (trial: Trial) => void): (error: unknown) => void {
  const { refresh } = useDeskState();
  return useCallback(
    (error: unknown) => {
      tell({ kind: 'failed', failure: failureOf(error) });
      refresh();
    },
    [tell, refresh],
  );
}

interface Longer {
  readonly campusId: string;
  readonly planId: string;
  readonly tell: (trial: Trial) => void;
  readonly follow: (solve: Solve) => void;
  readonly fail: (error: unknown) => void;
}

function useLonger({ campusId, planId, tell, follow, fail }: Longer): () => void {
  return useCallback(() => {
    tell({ kind: 'saving' });
    const wish = { seconds: LONGER_SECONDS, startFromPlan: planId };
    api.startSolve(campusId, wish).then(follow, fail);
  }, [campusId, planId, tell, follow, fail]);
}

function useStop(trial: Trial, tell: (trial: Trial) => void): () => void {
  const solveId = trial.kind === 'solving' ? trial.solve.id : null;
  return useCallback(() => {
    if (solveId === null) return;
    api.cancelSolve(solveId).catch((error: unknown) => {
      tell({ kind: 'failed', failure: failureOf(error) });
    });
  }, [solveId, tell]);
}

async function see(solve: Solve, tell: (trial: Trial) => void): Promise<void> {
  if (solve.state === 'queued' || solve.state === 'solving') {
    tell({ kind: 'solving', solve, isOutOfTouch: false });
    return;
  }
  try {
    const after = solve.planId === null ? null : await api.overview(solve.planId);
    tell({ kind: 'solved', solve, after });
  } catch (error) {
    tell({ kind: 'failed', failure: failureOf(error) });
  }
}
