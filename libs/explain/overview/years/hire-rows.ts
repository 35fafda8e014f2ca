import { seasonLabel, yearIndexOf } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { PositionType } from '#domain/labor.js';
import type { Hire } from '#domain/plan.js';
import { askDate, positionStart } from '#domain/position-dates.js';
import { priceGrowth } from '#estimating/site-charges/price-growth.js';
import { centsToDollars, scaleCents } from '#units/cents.js';
import { monthInWords } from '#units/dates-in-words.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import type { Ground } from '../ground.js';
import type { HireRow } from '../plan-overview.js';

/** Positions to ask for, in the order in which they start. */
export function hireRows({ campus, plan }: Ground): HireRow[] {
  return [...plan.decisions.hires]
    .sort((a, b) => a.year - b.year || (a.position < b.position ? -1 : 1))
    .map((hire) => hireRow(campus, hire));
}

export function positionOf(campus: Campus, id: string): PositionType {
  const position = campus.positions.find((p) => p.id === id);
  if (!position) throw new RangeError(`no position type ${id} in ${campus.name}`);
  return position;
}

/** Asked for `leadMonths` before the first day of the season in which it starts. */
function hireRow(campus: Campus, hire: Hire): HireRow {
  const { calendar } = campus;
  const position = positionOf(campus, hire.position);
  const yearIndex = yearIndexOf(calendar, hire.year);
  const start = positionStart(calendar, position, yearIndex);
  const base = position.term === 'recurring' ? position.annualCost : position.firstYearCost;
  return {
    position: position.name,
    count: hire.count,
    startsIn: seasonLabel(calendar, start),
    year: fiscalYearLabel(hire.year),
    askBy: monthInWords(askDate(calendar, position, yearIndex)),
    annualDollars: centsToDollars(scaleCents(base, priceGrowth(campus, 'wages', yearIndex))),
    term: position.term,
  };
}
