import { yearIndexOf } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { Commitment } from '#domain/commitment.js';
import { firstOpenYear } from '#rules/stability/frozen.js';
import type { FiscalYear } from '#units/fiscal-year.js';
import type { Ground } from '../columns/add-columns.js';

/** Years from the first one through the last in which something binding asks for a build. */
export function neededYears(campus: Campus): number {
  const { calendar, handPlacements, commitments } = campus;
  const all = calendar.horizonYears;
  const fixed = handPlacements.filter(({ kind }) => kind === 'fixed');
  const binding = commitments.filter(({ strength }) => strength === 'binding');
  return Math.min(
    all,
    Math.max(
      firstOpenYear(campus),
      ...fixed.map(({ year }) => (year === undefined ? all : through(campus, year))),
      ...binding.map(({ test }) => yearsAsked(campus, test)),
    ),
  );
}

function through({ calendar }: Campus, year: FiscalYear): number {
  return yearIndexOf(calendar, year) + 1;
}

function yearsAsked(campus: Campus, test: Commitment['test']): number {
  switch (test.kind) {
    case 'sites-each-year':
      return through(campus, test.to);
    case 'named-site':
    case 'area':
      return through(campus, test.by);
    case 'zone-balance':
      return campus.calendar.horizonYears;
    case 'no-new-positions-before':
    case 'no-unserved-care':
    case 'only-build-types':
      return 0;
  }
}

/** The lives that begin while something is still asked for: a plan need not have others. */
export function neededGround(ground: Ground): Ground {
  const years = neededYears(ground.campus);
  if (years >= ground.campus.calendar.horizonYears) return ground;
  return { ...ground, lifecycles: ground.lifecycles.filter((l) => l.yearIndex < years) };
}
