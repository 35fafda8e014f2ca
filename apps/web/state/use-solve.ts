import { useCallback, useEffect, useState } from 'react';
import { api, OfflineError, RefusedError, type Refusal, type Solve } from '../api.js';
import { isActive, watchSolve } from './watch-solve.js';

export interface SolveControl {
  /** The solve that is watched; null before the first. */
  readonly solve: Solve | null;
  readonly isRunning: boolean;
  /** Cancel was asked for, and the solve has not ended yet. */
  readonly isCancelling: boolean;
  /** The page has lost touch with a solve that may go on. */
  readonly isOutOfTouch: boolean;
  /** Why a solve could not be started or stopped. */
  readonly refusal: Refusal | 'offline' | null;
  readonly start: (seconds: number) => void;
  readonly cancel: () => void;
}

/** Starts, follows and stops solves of one campus, taking up one that was running already. */
export function useSolve(campusId: string, lastSolve: Solve | null): SolveControl {
  const [solve, setSolve] = useState(lastSolve);
  const [isStarting, setStarting] = useState(false);
  const [isCancelling, setCancelling] = useState(false);
  const [isOutOfTouch, setOutOfTouch] = useState(false);
  const [refusal, setRefusal] = useState<Refusal | 'offline' | null>(null);
  const runningId = solve !== null && isActive(solve) ? solve.id : null;

  useEffect(() => {
    if (runningId === null) return undefined;
    return watchSolve(runningId, {
      onSolve: setSolve,
      onTouch: (isInTouch) => setOutOfTouch(!isInTouch),
    });
  }, [runningId]);

  const start = useCallback(
    (seconds: number) => {
      setRefusal(null);
      setCancelling(false);
      setStarting(true);
      api
        .startSolve(campusId, { seconds })
        .then(setSolve, (error: unknown) => setRefusal(refusalOf(error)))
        .finally(() => setStarting(false));
    },
    [campusId],
  );

  const cancel = useCallback(() => {
    if (runningId === null) return;
    setRefusal(null);
    setCancelling(true);
    api.cancelSolve(runningId).catch((error: unknown) => {
      setCancelling(false);
      setRefusal(refusalOf(error));
    });
  }, [runningId]);

  return {
    solve,
    isRunning: isStarting || runningId !== null,
    isCancelling: runningId !== null && (isCancelling || solve?.cancelWanted === true),
    isOutOfTouch: isOutOfTouch && runningId !== null,
    refusal,
    start,
    cancel,
  };
}

function refusalOf(error: unknown): Refusal | 'offline' {
  if (error instanceof OfflineError) return 'offline';
  if (error instanceof RefusedError) return error.problem;
  throw error;
}
