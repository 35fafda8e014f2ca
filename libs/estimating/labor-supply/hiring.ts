/** A month of the calendar, 1 (January) to 12. */
export interface CalendarMonth {
  readonly year: number;
  readonly month: number;
}

/** How long a campus takes from asking for a position to a person at full use. */
export interface HiringPath {
  /** Month in which requests are taken, once a year. */
  readonly requestMonth: number;
  /** Month in which they are decided, the first such month after the request. */
  readonly decisionMonth: number;
  /** Month in which funding opens, the first such month after the decision. */
  readonly fundingMonth: number;
  readonly recruitMonths: number;
  /** Months at reduced productivity after the first day. */
  readonly rampMonths: number;
}

export interface HiringDates {
  readonly request: CalendarMonth;
  readonly decision: CalendarMonth;
  readonly funded: CalendarMonth;
  readonly starts: CalendarMonth;
  readonly fullyProductive: CalendarMonth;
}

/** The dates that follow from a request in a calendar year. */
export function hiringDates(path: HiringPath, requestYear: number): HiringDates {
  const request = indexOf({ year: requestYear, month: path.requestMonth });
  const decision = nextSuch(path.decisionMonth, request);
  const funded = nextSuch(path.fundingMonth, decision);
  const starts = funded + path.recruitMonths;
  return {
    request: monthAt(request),
    decision: monthAt(decision),
    funded: monthAt(funded),
    starts: monthAt(starts),
    fullyProductive: monthAt(starts + path.rampMonths),
  };
}

/** The latest request after which somebody is fully productive by the first day of `needed`. */
export function latestRequest(path: HiringPath, needed: CalendarMonth): HiringDates {
  let year = needed.year;
  for (;;) {
    const dates = hiringDates(path, year);
    if (indexOf(dates.fullyProductive) <= indexOf(needed)) return dates;
    year -= 1;
  }
}

/** Months from request to full productivity. */
export function leadMonths(dates: HiringDates): number {
  return indexOf(dates.fullyProductive) - indexOf(dates.request);
}

function indexOf({ year, month }: CalendarMonth): number {
  return year * 12 + month - 1;
}

function monthAt(index: number): CalendarMonth {
  return { year: Math.floor(index / 12), month: (index % 12) + 1 };
}

/** The first month of that name strictly after another. */
function nextSuch(month: number, after: number): number {
  const ahead = (month - 1 - (after % 12) + 12) % 12;
  return after + (ahead === 0 ? 12 : ahead);
}
