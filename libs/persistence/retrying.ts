import { passingFailure, StoreUnavailableError } from './store-errors.js';

/** Long enough for an embedded store to be started again by its parent. */
const patience = 15_000;
const firstWait = 50;
const longestWait = 1_000;

/**
 * `repeatable`: carrying it out twice does the same as once, so it is tried again in any case.
 * `once`: tried again only when nothing of it can have been kept.
 */
export type Repeating = 'repeatable' | 'once';

/** Waits out a store that is being restarted, or another's turn. Other errors pass through at once. */
export async function retrying<T>(repeating: Repeating, act: () => Promise<T>): Promise<T> {
  const until = Date.now() + patience;
  for (let wait = firstWait; ; wait = Math.min(wait * 2, longestWait)) {
    try {
      return await act();
    } catch (error) {
      const failure = passingFailure(error);
      if (failure === null) throw error;
      const mayRepeat = repeating === 'repeatable' || failure !== 'while-sent';
      if (!mayRepeat || Date.now() + wait > until) throw new StoreUnavailableError(error);
      await new Promise((resolve) => setTimeout(resolve, wait));
    }
  }
}
