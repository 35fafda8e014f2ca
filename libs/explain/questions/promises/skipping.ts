import type { Campus } from '#domain/campus.js';
import type { Commitment } from '#domain/commitment.js';
import { yearsLater, type FiscalYear } from '#units/fiscal-year.js';
import type { YearlyPromise } from '../limits/prefix.js';

/** The campus with a yearly promise let go in some years and kept up in the others. */
export function skippingYears(
  campus: Campus,
  promise: YearlyPromise,
  skipped: readonly FiscalYear[],
): Campus {
  const parts = rangesWithout(promise, skipped).map(({ from, to }, i): Commitment => ({
    ...promise,
    id: i === 0 ? promise.id : `${promise.id}-${i + 1}`,
    test: { ...promise.test, from, to },
  }));
  const commitments = campus.commitments.flatMap((c) => (c.id === promise.id ? parts : [c]));
  return { ...campus, commitments };
}

function rangesWithout(
  { test }: YearlyPromise,
  skipped: readonly FiscalYear[],
): { from: FiscalYear; to: FiscalYear }[] {
  const ranges: { from: FiscalYear; to: FiscalYear }[] = [];
  let from = test.from;
  for (const year of [...skipped].sort((a, b) => a - b)) {
    if (year < from || year > test.to) continue;
    if (year > from) ranges.push({ from, to: yearsLater(year, -1) });
    from = yearsLater(year, 1);
  }
  if (from <= test.to) ranges.push({ from, to: test.to });
  return ranges;
}
