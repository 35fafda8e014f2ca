import { yearAt } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { ResolveAnswer } from '#optimizer/resolve/order.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import type { Asked } from '../common/asked.js';
import { decisionsWithin, prefixWithPromise, type YearlyPromise } from './prefix.js';

/** Rounds of search for a plan of a prefix, where nobody waits and where time is limited. */
const ROUNDS = 12;
const TIMED_ROUNDS = 50_000;

/** Share of the time left for one prefix, and seconds at the most. */
const TRY_SHARE = 0.2;
const MOST_SECONDS = 4;

/** Years beyond the last one kept that are looked at as well, since a longer prefix may do what a shorter cannot. */
const LOOK_BEYOND = 2;

export interface TriedPrefix {
  /** Last year of the prefix. */
  readonly through: string;
  readonly ending: ResolveAnswer['ending'];
}

/** To which year a promise can be kept. */
export interface LastKept {
  /** Years of the longest prefix for which a plan was found; 0: for none. */
  readonly foundYears: number;
  /** Years of the shortest prefix that is proven to have no plan; `null`: none is. */
  readonly impossibleYears: number | null;
  readonly tried: readonly TriedPrefix[];
}

export interface Sought {
  readonly campus: Campus;
  readonly promise: YearlyPromise;
  /** Years for which a plan that keeps it is known already. */
  readonly least: number;
  /** Years that are tried first, since a plan is likely to be known for them. */
  readonly guess: number;
  /** Longest prefix to look at. */
  readonly most: number;
}

/**
 * The last year to which a promise can be kept: by halving over the prefixes, each with its end
 * anchored anew, then by a look at the next ones beyond, since the rule after the horizon need not make
 * longer prefixes harder.
 */
export async function lastKept(asked: Asked, sought: Sought): Promise<LastKept> {
  const { campus, promise, least, guess, most } = sought;
  const endings = new Map<number, ResolveAnswer['ending']>();
  const kept = async (years: number) => {
    const known = endings.get(years);
    if (known) return known;
    const ending = await tryPrefix(asked, { campus, promise, years });
    endings.set(years, ending);
    return ending;
  };
  let [low, high] = [least, most];
  if (guess > low && guess < most && (await kept(guess)) === 'found') low = guess;
  if (low < most && (await kept(most)) === 'found') low = most;
  while (high - low > 1 && asked.resolver.secondsLeft() > 0) {
    const middle = Math.floor((low + high) / 2);
    if ((await kept(middle)) === 'found') low = middle;
    else high = middle;
  }
  for (let more = 1; more <= LOOK_BEYOND && low + more <= most; more++) {
    if (asked.resolver.secondsLeft() <= 0) break;
    if ((await kept(low + more)) === 'found') [low, more] = [low + more, 0];
  }
  return told(campus, low, endings);
}

function told(
  { calendar }: Campus,
  foundYears: number,
  endings: ReadonlyMap<number, ResolveAnswer['ending']>,
): LastKept {
  const tried = [...endings]
    .sort(([a], [b]) => a - b)
    .map(([years, ending]) => ({ through: fiscalYearLabel(yearAt(calendar, years - 1)), ending }));
  const impossible = [...endings].flatMap(([years, ending]) =>
    ending === 'impossible' && years > foundYears ? [years] : [],
  );
  return {
    foundYears,
    impossibleYears: impossible.length > 0 ? Math.min(...impossible) : null,
    tried,
  };
}

async function tryPrefix(
  asked: Asked,
  of: { readonly campus: Campus; readonly promise: YearlyPromise; readonly years: number },
): Promise<ResolveAnswer['ending']> {
  const campus = prefixWithPromise(of.campus, of.promise, of.years);
  const left = asked.resolver.secondsLeft();
  const timed = Number.isFinite(left);
  const [answer] = await asked.resolver.resolve([
    {
      campus,
      start: decisionsWithin(campus, asked.plan.decisions, of.years),
      seed: asked.seed,
      effort: { kind: 'rounds', rounds: timed ? TIMED_ROUNDS : ROUNDS },
      ...(timed ? { seconds: Math.min(MOST_SECONDS, Math.max(0.5, left * TRY_SHARE)) } : {}),
      wish: 'exists',
    },
  ]);
  return answer?.ending ?? 'not-found';
}
