const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** `November 2032` for an ISO date in that month. */
export function monthInWords(isoDate: string): string {
  const { year, month } = partsOf(isoDate);
  return `${month} ${year}`;
}

/** `June 30, 2029` for an ISO date. */
export function dayInWords(isoDate: string): string {
  const { year, month, day } = partsOf(isoDate);
  return `${month} ${day}, ${year}`;
}

function partsOf(isoDate: string): { year: number; month: string; day: number } {
  const [year = NaN, number = NaN, day = NaN] = isoDate.slice(0, 10).split('-').map(Number);
  const month = MONTHS[number - 1];
  if (month === undefined || Number.isNaN(year)) throw new RangeError(`no ISO date: ${isoDate}`);
  return { year, month, day };
}
