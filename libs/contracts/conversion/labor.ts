import type { LaborPool, PositionType, WorkDay } from '#domain/labor.js';
import { dollarsToCents } from '#units/cents.js';
import { hoursToCenti } from '#units/centihours.js';
import type { CampusFile } from '../campus-file.schema.js';
import { optional, toOptionalYear, toSeasonHours } from './values.js';

type WorkDayPart = CampusFile['workDays'][number];

export function toPool({ from, to, ...pool }: CampusFile['pools'][number]): LaborPool {
  return {
    ...pool,
    hours: toSeasonHours(pool.hours),
    ...optional('from', toOptionalYear(from)),
    ...optional('to', toOptionalYear(to)),
  };
}

/**
 * Effective hours of one event: sign-ups x show rate x length x effectiveness. Its leaders' hours:
 * ceil(people present / people per leader) x length, where a part of a person counts as a person.
 */
export function toWorkDay(day: WorkDayPart): WorkDay {
  const present = peoplePresent(day);
  const leaders = Math.ceil(present / day.peoplePerLeader);
  return {
    id: day.id,
    name: day.name,
    season: day.season,
    mostPerSeason: day.events,
    hoursEach: hoursToCenti(day.signUps * day.showRate * day.hoursLong * day.effectiveness),
    leaderHoursEach: hoursToCenti(leaders * day.hoursLong),
    tasks: day.tasks,
    peoplePresent: present,
    leaders,
    turnout: { signUps: day.signUps, showRate: day.showRate },
    provenance: day.provenance,
  };
}

/** Whole people; the rounding keeps 50 x 0.62, stored as 31.000000000000004, at 31. */
function peoplePresent({ signUps, showRate }: WorkDayPart): number {
  return Math.ceil(Number((signUps * showRate).toFixed(9)));
}

export function toPosition(position: CampusFile['positions'][number]): PositionType {
  const { annualDollars, firstYearDollars, oneTimeDollars, ...same } = position;
  return {
    ...same,
    hours: toSeasonHours(position.hours),
    firstYearHours: toSeasonHours(position.firstYearHours),
    annualCost: dollarsToCents(annualDollars),
    firstYearCost: dollarsToCents(firstYearDollars),
    oneTimeCost: dollarsToCents(oneTimeDollars),
  };
}
