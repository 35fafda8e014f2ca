import type { Campus } from '#domain/campus.js';
import type { Outcome } from '../stress/outcome.js';
import type { PairedResult } from './answer.js';
import { sampledShare, spreadOf } from './share.js';

interface Pair {
  readonly kept: Outcome;
  readonly anew: Outcome;
}

/** What planning anew changes in the futures that were met both ways; `null` where none were. */
export function pairedResult(
  { commitments, calendar }: Campus,
  kept: readonly Outcome[],
  anew: readonly Outcome[],
): PairedResult | null {
  const byFuture = new Map(kept.map((o) => [o.future, o]));
  const pairs = anew.flatMap((o): Pair[] => {
    const same = byFuture.get(o.future);
    return same ? [{ kept: same, anew: o }] : [];
  });
  if (pairs.length === 0) return null;
  const share = (test: (pair: Pair) => boolean) =>
    sampledShare(pairs.filter(test).length, pairs.length);
  const more = (of: (o: Outcome) => number) =>
    spreadOf(pairs.map((pair) => of(pair.anew) - of(pair.kept)));
  return {
    futures: pairs.length,
    promises: commitments.map(({ id, name }, place) => {
      const years = ({ broken }: Outcome) => {
        const at = broken[place] ?? -1;
        return at < 0 ? calendar.horizonYears : at;
      };
      return {
        ...{ id, name },
        longer: share((pair) => years(pair.anew) > years(pair.kept)),
        shorter: share((pair) => years(pair.anew) < years(pair.kept)),
      };
    }),
    moreBuilt: more((o) => o.built),
    moreUnserved: more((o) => o.unserved.reduce((sum, hours) => sum + hours, 0)),
  };
}
