import type { LimitRow, PlanOverview, YearRow } from '#explain/overview/plan-overview.js';
import { capitalized } from '#units/in-words.js';
import type { Value } from '../figures/values.js';
import type { Band } from '../figures/year-strip.js';
import { busySeasonRows, wanted } from './season.js';

/** How much of each limit every year uses; 1 is all of it. */
export function bandsOf(overview: PlanOverview): Band[] {
  const season = busySeasonRows(overview);
  const name = season[0]?.season ?? 'season';
  const hours = new Map(season.map((row) => [row.year, hoursShare(row)]));
  const money = new Map(overview.money.map((row) => [row.year, moneyShare(row)]));
  const bandOf = (label: string, resource: string, share: (row: YearRow) => Value): Band => ({
    label,
    shares: overview.years.map((row) => atLimit(limitOf(overview, resource), row.year, share(row))),
  });
  return [
    bandOf(`${capitalized(name)} hours`, `${name} hours`, ({ year }) => hours.get(year) ?? null),
    bandOf('Money', 'money', ({ year }) => money.get(year) ?? null),
    bandOf('Compost', 'compost', ({ year }) => compostShare(overview, year)),
    bandOf('Sites', 'sites', sitesShare),
  ];
}

function limitOf({ limits }: PlanOverview, resource: string): LimitRow | undefined {
  return limits.find((limit) => limit.resource === resource);
}

/** A limit is over in the year in which the overview says that it is, and nowhere if in none. */
function atLimit(limit: LimitRow | undefined, year: string, share: Value): Value {
  if (share === null) return null;
  if (limit?.year === year) return Math.max(share, 1.01);
  return limit?.year === null ? Math.min(share, 1) : share;
}

/** Hours wanted of those that the people already there can give; over 1 where some go undone. */
function hoursShare(row: PlanOverview['seasons'][number]): Value {
  const all = wanted(row);
  const served = row.shortNow > 0 ? all - row.shortNow : row.supplyNow;
  return served > 0 ? all / served : null;
}

/** Spent of what could have been spent in the year, lapsed money included. */
function moneyShare(row: PlanOverview['money'][number]): Value {
  const spent = row.build + row.care + row.positions + row.compost + row.standing;
  const had = spent + row.closing + row.lapsed;
  return had > 0 ? spent / had : null;
}

/** Compost used of what the campus had, in the season of the year that used the largest part. */
function compostShare({ compost }: PlanOverview, year: string): Value {
  const shares = compost
    .filter((row) => row.year === year)
    .map(({ builds, topDress, givenAway, stock, bought }) => {
      const used = builds + topDress;
      const had = used + givenAway + stock - bought;
      return had > 0 ? used / had : used > 0 ? 2 : 0;
    });
  return shares.length === 0 ? null : Math.max(...shares);
}

/** Sites wanted of those that could still be prepared in the year. */
function sitesShare({ sitesWanted, sitesLeft }: YearRow): Value {
  return sitesLeft > 0 ? sitesWanted / sitesLeft : sitesWanted > 0 ? 2 : 0;
}
