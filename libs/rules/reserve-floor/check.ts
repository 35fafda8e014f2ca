import { plannedYears, yearAt } from '#domain/calendar.js';
import { paybackOf } from '#estimating/purses/paybacks.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import type { Check } from '../check.js';

/** The closing balance of a fund never falls below its floor, in any year of horizon and tail. */
export const checkReserveFloor: Check = (campus, plan) =>
  campus.funds
    .filter((fund) => fund.counted && fund.floor > 0)
    .flatMap((fund) =>
      Array.from({ length: plannedYears(campus.calendar) }, (_, i) =>
        yearAt(campus.calendar, i),
      ).flatMap((year) => {
        const received = fund.inflows
          .filter((f) => f.year <= year)
          .reduce((sum, f) => sum + f.amount, 0);
        const spent = plan.spending
          .filter((s) => s.fund === fund.id && s.year <= year)
          .reduce((sum, s) => sum + s.amount, 0);
        const back = plan.spending
          .filter((s) => s.fund === fund.id && (paybackOf(campus, s)?.year ?? Infinity) <= year)
          .reduce((sum, s) => sum + s.amount, 0);
        const closing = received - spent + back;
        if (closing >= fund.floor) return [];
        return [
          {
            rule: 'reserve-floor',
            record: fund.id,
            message: `${fund.name} closes ${fiscalYearLabel(year)} at $${closing / 100}; its floor is $${fund.floor / 100}`,
          },
        ];
      }),
    );
