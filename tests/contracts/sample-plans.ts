import fc from 'fast-check';
import { plannedSeasons, plannedYears } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { TASK_CLASSES } from '#domain/labor.js';
import { COST_LINES } from '#domain/money.js';
import type { Plan } from '#domain/plan.js';
import { centiHours } from '#units/centihours.js';
import { centiYards } from '#units/centiyards.js';
import { cents } from '#units/cents.js';
import { yearsLater } from '#units/fiscal-year.js';

/** Plans that name only what the campus has; whether they keep its rules does not matter here. */
export function plansOf(campus: Campus): fc.Arbitrary<Plan> {
  const one = <T>(values: readonly T[]) => fc.constantFrom(...values);
  const list = <T>(row: fc.Arbitrary<T>) => fc.array(row, { maxLength: 6 });
  const ids = (records: readonly { id: string }[]) => one(records.map(({ id }) => id));
  const year = fc
    .nat(plannedYears(campus.calendar) - 1)
    .map((later) => yearsLater(campus.calendar.firstYear, later));
  const season = fc.nat(plannedSeasons(campus.calendar).length - 1);
  const hours = fc.nat(99_999_999).map(centiHours);
  const yards = fc.nat(9_999_999).map(centiYards);
  const count = fc.integer({ min: 1, max: 9 });
  const taskClass = one(TASK_CLASSES);
  const source = ids([...campus.pools, ...campus.workDays, ...campus.positions]);
  const funds = campus.funds.filter(({ inflows }) => inflows.length > 0);
  const amount = fc.nat(2_000_000_000).map(cents);
  const spend = one(funds).chain((fund) =>
    fc.record(
      {
        fund: fc.constant(fund.id),
        inflow: fc.nat(fund.inflows.length - 1),
        year,
        line: one(COST_LINES),
        amount,
        site: ids(campus.candidates),
        repaidBy: fc.record({ fund: fc.constant(fund.id), inflow: fc.constant(0) }),
      },
      { requiredKeys: ['fund', 'inflow', 'year', 'line', 'amount'] },
    ),
  );
  const heap = { givenAway: yards, stock: yards };
  return fc.record({
    decisions: fc.record({
      placements: list(
        fc.record({ site: ids(campus.candidates), buildType: ids(campus.buildTypes), year }),
      ),
      hires: list(fc.record({ position: ids(campus.positions), year, count })),
      workDays: list(fc.record({ workDay: ids(campus.workDays), year, count })),
      purchases: list(
        fc.record(
          { season, grade: fc.constant('other' as const), cubicYards: count },
          { requiredKeys: ['season', 'cubicYards'] },
        ),
      ),
    }),
    labor: list(fc.record({ season, source, taskClass, hours })),
    unserved: list(fc.record({ season, taskClass, hours })),
    spending: list(spend),
    compost: list(
      fc.record(
        { season, ...heap, certified: fc.record(heap) },
        { requiredKeys: ['season', 'givenAway', 'stock'] },
      ),
    ),
  });
}
