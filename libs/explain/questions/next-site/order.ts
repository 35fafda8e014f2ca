import type { ChoiceRow, Standing } from './answer.js';

const STANDINGS: readonly Standing[] = [
  'recommended',
  'tied',
  'found-worse',
  'worse',
  'not-found',
  'impossible',
];

/** Steps within which given money and hours of care are called the same. */
export const DOLLAR_STEP = 1000;
export const HOUR_STEP = 10;

/** Given money that lapses with a choice. */
export function lostDollars({ giftsLost }: ChoiceRow): number {
  return giftsLost.reduce((sum, { dollars }) => sum + dollars, 0);
}

/** Whether one amount is less than another by more than they can be trusted. */
export function isLess(a: number, b: number, step: number): boolean {
  return Math.round(a / step) < Math.round(b / step);
}

/**
 * By standing. Among those that cannot be told apart, the best found among them, never by decimals of
 * benefit: single sites first, then by given money that would lapse, then by the hours of care that the site adds, then by id; the
 * first of them is the one recommended. The others stay as they came, the least worse first.
 */
export function inOrder(rows: readonly ChoiceRow[]): ChoiceRow[] {
  const place = ({ standing }: ChoiceRow) => STANDINGS.indexOf(standing);
  const group = rows.filter(isOfGroup).sort(byFacts);
  const others = rows
    .map((row, came) => ({ row, came }))
    .filter(({ row }) => !isOfGroup(row))
    .sort((a, b) => place(a.row) - place(b.row) || a.came - b.came)
    .map(({ row }) => row);
  const named = group.map((row, i): ChoiceRow => ({
    ...row,
    standing: i === 0 ? 'recommended' : 'tied',
  }));
  return [...named, ...others];
}

function isOfGroup({ standing }: ChoiceRow): boolean {
  return standing === 'recommended' || standing === 'tied';
}

function byFacts(a: ChoiceRow, b: ChoiceRow): number {
  // The question is which one: building none, or two at once, comes after the single sites.
  const apart = Math.abs(a.sites.length - 1) - Math.abs(b.sites.length - 1);
  if (apart !== 0) return apart;
  const first = (c: ChoiceRow, d: ChoiceRow) =>
    isLess(lostDollars(c), lostDollars(d), DOLLAR_STEP) ||
    (!isLess(lostDollars(d), lostDollars(c), DOLLAR_STEP) &&
      isLess(c.busySeasonHours, d.busySeasonHours, HOUR_STEP));
  if (first(a, b)) return -1;
  if (first(b, a)) return 1;
  return a.id < b.id ? -1 : 1;
}
