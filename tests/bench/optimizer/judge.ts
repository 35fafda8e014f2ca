import { lastOf, type Moment, type PeerRun } from '../peers/outcome.js';
import type { Contest } from './contest.js';
import type { OursRun } from './ours.js';

/** A plan within this share of another counts as equal to it. */
const MATCHED = 1e-4;
/** No gap counts as smaller than this when gaps are compared. */
const GAP_FLOOR = 1e-3;

/** |value - bound| / max(|value|, 1). */
export function gapOf({ objective, bound }: Pick<PeerRun, 'objective' | 'bound'>) {
  if (objective === undefined || bound === undefined) return undefined;
  return Math.abs(objective - bound) / Math.max(1, Math.abs(objective));
}

/** First second at which a run had a plan at least as good as a value, within 1e-4 of it. */
export function secondsTo(run: PeerRun, value: number): number | undefined {
  const least = value - MATCHED * Math.abs(value);
  return run.moments.find(({ objective = -Infinity }) => objective >= least)?.seconds;
}

/** First second at which a run's best gap so far was at most a share. */
export function secondsToGap(run: PeerRun, gap: number): number | undefined {
  const seen: Moment[] = [];
  return run.moments.find((moment) => {
    seen.push(moment);
    const now = gapOf({ ...objectiveIn(seen), ...boundIn(seen) });
    return now !== undefined && now <= gap;
  })?.seconds;
}

function objectiveIn(seen: readonly Moment[]): { objective?: number } {
  const objective = lastOf(seen, 'objective');
  return objective === undefined ? {} : { objective };
}

function boundIn(seen: readonly Moment[]): { bound?: number } {
  const bound = lastOf(seen, 'bound');
  return bound === undefined ? {} : { bound };
}

export interface Verdict {
  /** Best plan of any peer. */
  readonly bestPeer?: number;
  /** Seconds in which ours had a plan as good. */
  readonly matchedAfter?: number;
  readonly ourGap?: number;
  /** Smallest gap of any peer. */
  readonly peerGap?: number;
  /** Our gap over the best peer's, neither taken below 0.1 %. */
  readonly gapRatio?: number;
}

/** What is asked of ours: the peers' best plan within a tenth of the time, and half their gap at its end. */
export function judge({ ours, peers }: Contest, formulation: string): Verdict {
  const runs = peers.filter((p) => p.formulation === formulation).map(({ run }) => run);
  const plans = runs.flatMap(({ objective }) => objective ?? []);
  const gaps = runs.flatMap((run) => gapOf(run) ?? []);
  const bestPeer = plans.length > 0 ? Math.max(...plans) : undefined;
  const peerGap = gaps.length > 0 ? Math.min(...gaps) : undefined;
  const ourGap = gapOf(ours);
  const matchedAfter = bestPeer === undefined ? firstAnswer(ours) : secondsTo(ours, bestPeer);
  return {
    ...(bestPeer === undefined ? {} : { bestPeer }),
    ...(matchedAfter === undefined ? {} : { matchedAfter }),
    ...(ourGap === undefined ? {} : { ourGap }),
    ...(peerGap === undefined ? {} : { peerGap }),
    ...(ourGap === undefined || peerGap === undefined
      ? {}
      : { gapRatio: Math.max(ourGap, GAP_FLOOR) / Math.max(peerGap, GAP_FLOOR) }),
  };
}

/** Seconds to any plan, or to a proof that there is none. */
function firstAnswer({ firstPlan, ended, seconds }: OursRun): number | undefined {
  return firstPlan ?? (ended === 'infeasible' ? seconds : undefined);
}

/** Whether ours had the peers' best plan in a tenth of the time; where no peer has a plan, any plan of ours. */
export function isMatched({ matchedAfter }: Verdict, seconds: number): boolean {
  return matchedAfter !== undefined && matchedAfter <= seconds / 10;
}

/** Whether our gap is at most half of the best peer's; where no peer has a gap, whether ours has one. */
export function isHalved({ ourGap, gapRatio }: Verdict): boolean {
  if (ourGap === undefined) return false;
  return gapRatio === undefined || gapRatio <= 0.5 || ourGap <= GAP_FLOOR;
}
