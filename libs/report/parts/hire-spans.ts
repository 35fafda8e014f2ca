import type { HireRow } from '#explain/overview/plan-overview.js';

/** Equal hires for one season each, in years that follow each other, told in one line. */
export interface HireSpan {
  readonly first: HireRow;
  /** The last of them; left out where there is one only. */
  readonly again?: HireRow;
}

export function hireSpans(hires: readonly HireRow[]): HireSpan[] {
  const spans: { first: HireRow; again?: HireRow }[] = [];
  for (const hire of hires) {
    const span = spans.find((s) => follows(s.again ?? s.first, hire));
    if (span) span.again = hire;
    else spans.push({ first: hire });
  }
  return spans;
}

/** The year after: `FY50` and `FY51`, and `FY99` and `FY00`. */
function follows(before: HireRow, after: HireRow): boolean {
  const year = ({ year: label }: HireRow) => Number(label.replace(/^FY/, ''));
  return (
    after.term === 'one-season' &&
    before.position === after.position &&
    before.count === after.count &&
    (year(before) + 1) % 100 === year(after)
  );
}
