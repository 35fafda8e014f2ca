import { futures, type FuturesAsk } from '#futures/futures.js';
import type { FuturesAnswer } from '#futures/results/answer.js';

export type { FuturesAnswer } from '#futures/results/answer.js';
export {
  moreInWords,
  ofFutures,
  quantileInWords,
  quantilesInWords,
  shareInWords,
} from '#units/sampled-in-words.js';

/** Futures that a plan meets unless told otherwise. */
export const USUAL_FUTURES = 1000;

/** Futures that it meets again, made anew each year. */
export const MENDED_FUTURES = 100;

/** How a verified plan fares when people, money, prices, and weather do not keep to it. */
export function answerFutures(ask: FuturesAsk): Promise<FuturesAnswer> {
  return futures(ask);
}
