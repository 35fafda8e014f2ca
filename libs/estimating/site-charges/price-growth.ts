import type { Campus } from '#domain/campus.js';
import type { EscalationKind } from '#domain/money.js';
import { yearAt } from '#domain/calendar.js';
import { escalationFactor } from '../cost/escalation.js';

/** (1 + g) ^ (year - price year): what a dollar of the price year costs in a year of the plan. */
export function priceGrowth(campus: Campus, kind: EscalationKind, yearIndex: number): number {
  const years = yearAt(campus.calendar, yearIndex) - campus.calendar.priceYear;
  return escalationFactor(campus.escalation[kind], years);
}
