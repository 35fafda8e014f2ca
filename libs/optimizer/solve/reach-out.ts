import { pricesOf } from '../improve/prices.js';
import type { Board } from './board.js';
import { coreLimits, secondsLimit, TIER_SHARES } from './budget.js';
import {
  reachFor,
  solveReach,
  type Reach,
  type ReachGoal,
  type Relaxations,
} from './part-solve.js';
import type { Steps } from './steps.js';

/** Who works on a tier, and with what. */
export interface Workers {
  readonly board: Board;
  readonly steps: Steps;
  readonly relaxations: Relaxations;
}

/** For a tier that counts sites: goes for its bound, then for one better until that fails. */
export function reachOut(by: Workers, place: number, seconds: number): void {
  const { around } = by.board.run;
  const until = around.elapsed() + seconds;
  reachOnce(by, place, { goal: 'bound', until });
  while (reachOnce(by, place, { goal: 'one-better', until }));
}

/** True where a better plan in this tier was found on the way to a goal. */
function reachOnce(
  by: Workers,
  place: number,
  { goal, until }: { readonly goal: ReachGoal; readonly until: number },
): boolean {
  const { board, steps, relaxations } = by;
  const left = until - board.run.around.elapsed();
  if (left <= 0 || steps.isDone(place)) return false;
  const reach = reachFor(board, place, { goal, limits: secondsLimit(left) });
  if (!reach) return false;
  const value = () => board.best?.values[place] ?? Infinity;
  const before = value();
  for (const way of waysTo(by, { place, reach, seconds: left })) {
    way();
    if (value() >= before) continue;
    // It holds no tier after this one, so it admits all that benefit may have now.
    const goalValue = reach.held.get(board.on.tiers[place]?.name ?? '') ?? -Infinity;
    if (value() <= goalValue) relaxations.keep(board.benefit, reach.relaxation);
    return true;
  }
  return false;
}

function waysTo(
  { board, steps }: Workers,
  of: { readonly place: number; readonly reach: Reach; readonly seconds: number },
): (() => void)[] {
  const { relaxation, held } = of.reach;
  const pause = steps.pause(of.seconds * TIER_SHARES.search);
  const limits = coreLimits(board.run.settings, of.seconds * TIER_SHARES.core);
  return [
    () => steps.dive({ relaxation, held, seconds: of.seconds * TIER_SHARES.dive }, pause),
    () => steps.search(pause, pricesOf(relaxation)),
    () => solveReach(board, of.place, { ...of.reach, most: steps.lives, limits }),
  ];
}
