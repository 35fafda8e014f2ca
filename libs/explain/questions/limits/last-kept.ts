import type { Campus } from '#domain/campus.js';
import type { Asked } from '../common/asked.js';
import { Prefixes, type TriedPrefix } from './prefixes.js';
import type { YearlyPromise } from './prefix.js';

/** Years beyond the last one kept that are looked at as well, since a longer prefix may do what a shorter cannot. */
const LOOK_BEYOND = 2;

/** To which year a promise can be kept. */
export interface LastKept {
  /** Years of the longest prefix for which a plan was found; 0: for none. */
  readonly foundYears: number;
  /** Years of the shortest prefix that is proven to have no plan; `null`: none is. */
  readonly impossibleYears: number | null;
  readonly tried: readonly TriedPrefix[];
}

export interface Sought {
  /** Years for which a plan that keeps it is known already. */
  readonly least: number;
  /** Years that are tried first, since a plan is likely to be known for them. */
  readonly guess: number;
  /** Longest prefix to look at. */
  readonly most: number;
}

/** The last year to which a promise can be kept on a campus. */
export async function lastKept(
  asked: Asked,
  of: { readonly campus: Campus; readonly promise: YearlyPromise } & Sought,
): Promise<LastKept> {
  const prefixes = new Prefixes(asked, of);
  const { foundYears } = await lastIn(asked, prefixes, of);
  return decided(asked, prefixes, { foundYears, most: of.most });
}

/**
 * The last year to which a promise can be kept: by halving over the prefixes, each with its end
 * anchored anew, then by a look at the next ones beyond, since the rule after the horizon need not make
 * longer prefixes harder.
 */
export async function lastIn(
  asked: Asked,
  prefixes: Prefixes,
  { least, guess, most }: Sought,
): Promise<LastKept> {
  const kept = async (years: number) => (await prefixes.ending(years)) === 'found';
  let [low, high] = [least, most];
  if (guess > low && guess < most && (await kept(guess))) low = guess;
  if (low < most && (await kept(most))) low = most;
  while (high - low > 1 && asked.resolver.secondsLeft() > 0) {
    const middle = Math.floor((low + high) / 2);
    if (await kept(middle)) low = middle;
    else high = middle;
  }
  for (let more = 1; more <= LOOK_BEYOND && low + more <= most; more++) {
    if (asked.resolver.secondsLeft() <= 0) break;
    if (await kept(low + more)) [low, more] = [low + more, 0];
  }
  return told(prefixes, low);
}

/** Looks again, with the time left, at the years after the last one kept that were not decided. */
export async function decided(
  asked: Asked,
  prefixes: Prefixes,
  { foundYears, most }: { readonly foundYears: number; readonly most: number },
): Promise<LastKept> {
  let low = foundYears;
  const goOn = () => {
    const left = asked.resolver.secondsLeft();
    return low < most && left > 0 && Number.isFinite(left);
  };
  while (goOn() && (await prefixes.again(low + 1)) === 'found') low += 1;
  return told(prefixes, low);
}

function told(prefixes: Prefixes, foundYears: number): LastKept {
  return {
    foundYears,
    impossibleYears: prefixes.impossibleAbove(foundYears),
    tried: prefixes.tried(),
  };
}
