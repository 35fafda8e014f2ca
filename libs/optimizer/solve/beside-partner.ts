import { pricesOf } from '../improve/prices.js';
import { secondsLimit, TIER_SHARES } from './budget.js';
import type { Workers } from './reach-out.js';
import type { Relaxation } from './solve-tier.js';
import { takeTurns, type Step } from './step-choice.js';

/** Share of the time left in which the partner is waited for at the most, rather than to relax here as well. */
const AWAIT_SHARE = 0.25;

/** Seconds in which prices come in most programs. */
const REST_SECONDS = 3;

/** Seconds of a dive with the search around what it found, and what share of them the dive may take. */
export const DIVE_SECONDS = 3;
const DIVE_SHARE = 0.27;

/** Seconds in which lives are met and a plan is put together of them, and of one solve with people nearly settled. */
const MERGE_SECONDS = 2.4;
const NEAR_SECONDS = 4;

/** Seconds of one search: before the partner tells more than a relaxation, and after. */
const FIRST_SEARCH_SECONDS = 4;
const SEARCH_SECONDS = 5;

/** Seconds of one solve among few lives, and of the re-solves of a few sites. */
const CORE_SECONDS = 8;
const PARTS_SECONDS = 4;

/** The relaxation of benefit as the tiers before it are held now, told or solved here; `undefined`: no time for it. */
export function relaxationNow(by: Workers, seconds: number): Relaxation | undefined {
  const { board, relaxations } = by;
  return board.toldOf(board.benefit) ?? relaxations.of(board.benefit, secondsLimit(seconds));
}

/**
 * Waits until the partner tells the relaxation at which it is from the beginning. Rests at first: the partner
 * is done the sooner, and what a search finds without prices is soon left behind.
 */
export function awaitPrices({ board, steps }: Workers, left: number): void {
  const { benefit } = board;
  if (!board.holds(board.keptInFull(benefit))) return;
  const isTold = () => {
    board.hear();
    return board.toldOf(benefit) !== undefined;
  };
  const { around } = board.run;
  const until = around.elapsed() + left * AWAIT_SHARE;
  steps.prepare();
  const rested = Math.min(until, around.elapsed() + REST_SECONDS);
  while (!isTold() && around.elapsed() < rested && !board.shouldStop()) around.partner?.pause();
  if (!isTold()) steps.search({ seconds: until - around.elapsed(), enough: isTold });
}

/**
 * Betters benefit beside a partner that proves, by whatever gains most: first until the partner tells better
 * prices than a plain relaxation has, then until the time is over.
 */
export function workBeside(by: Workers, left: () => number): void {
  const { board, steps } = by;
  const place = board.benefit;
  const least = left() * (1 - TIER_SHARES.search);
  const step = (seconds: number, run: (r: Relaxation, s: number) => void): Step => ({
    seconds,
    run: (s) => {
      const relaxation = steps.isDone(place) ? undefined : relaxationNow(by, left());
      if (relaxation) run(relaxation, s);
    },
  });
  const dive = step(DIVE_SECONDS, (r, s) => diveNear(by, r, s));
  const merge = step(MERGE_SECONDS, (r, s) => steps.merge(place, r, s));
  const near = step(NEAR_SECONDS, (r, s) => steps.nearPeople(place, r, s));
  const turns = {
    worth: () => board.best?.values[place] ?? 0,
    elapsed: () => board.run.around.elapsed(),
  };
  takeTurns({
    ...turns,
    steps: [
      dive,
      step(FIRST_SEARCH_SECONDS, (r, s) =>
        steps.search({ seconds: s }, pricesOf(steps.dived ?? r)),
      ),
      merge,
    ],
    left: () => left() - least,
    done: () => board.toldOf(place)?.counted !== undefined || steps.isDone(place),
  });
  takeTurns({
    ...turns,
    steps: [
      step(SEARCH_SECONDS, (r, s) => steps.search({ seconds: s }, pricesOf(r))),
      merge,
      dive,
      near,
      step(CORE_SECONDS, (r, s) => steps.core(place, r, s)),
      step(PARTS_SECONDS, (r, s) => steps.smallParts(place, r, s)),
    ],
    left,
    done: () => steps.isDone(place),
  });
}

/** A dive, and a search around what it found for the rest of the time. */
export function diveNear({ board, steps }: Workers, relaxation: Relaxation, seconds: number): void {
  const held = board.heldTiers(board.benefit);
  const dived = seconds * DIVE_SHARE;
  steps.dive({ relaxation, held, seconds: dived }, { seconds: seconds - dived });
}
