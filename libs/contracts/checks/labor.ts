import { anError, aWarning, type Problem } from '#domain/problem.js';
import { toWorkDay } from '../conversion/labor.js';
import { toFiscalYear } from '../conversion/values.js';
import type { FileView } from './file-view.js';

type WorkDayPart = FileView['workDays'][number];
type PositionPart = FileView['positions'][number];

/** Pools, work days and positions that cannot be what they say. */
export function laborProblems(view: FileView): Problem[] {
  return [
    ...view.pools.flatMap(poolProblems),
    ...view.workDays.flatMap((day) => [...netProblems(day), ...twiceProblems(day)]),
    ...leaderProblems(view),
    ...view.positions.flatMap((position) => beforeStartProblems(view, position)),
    ...view.positions.flatMap(rampProblems),
  ];
}

function poolProblems({ id, from, to }: FileView['pools'][number]): Problem[] {
  if (!from || !to || toFiscalYear(from) <= toFiscalYear(to)) return [];
  return [
    anError({ code: 'POOL-YEARS-INVERTED', record: `pool ${id}`, field: 'to', value: to }, [
      `The last year ${to} comes before the first year ${from}.`,
      'Swap or correct the years.',
    ]),
  ];
}

function netProblems(day: WorkDayPart): Problem[] {
  if (!(day.peoplePerLeader >= 1) || day.events === 0) return [];
  const { hoursEach, leaderHoursEach } = toWorkDay(day);
  if (leaderHoursEach < hoursEach) return [];
  const place = {
    code: 'WORKDAY-NET-NEGATIVE',
    record: `work day ${day.id}`,
    field: 'peoplePerLeader',
  };
  return [
    aWarning({ ...place, value: day.peoplePerLeader }, [
      `One event brings ${hoursEach / 100} effective hours and takes ${leaderHoursEach / 100} of its leaders'.`,
      'The plan will not hold it for its hours; check sign-ups, effectiveness and people per leader.',
    ]),
  ];
}

/** Hours of a build are volunteer rates, which hold breaks and inexperience already. */
function twiceProblems({ id, tasks, effectiveness }: WorkDayPart): Problem[] {
  const builds = tasks.filter((task) => task === 'prepare' || task === 'plant');
  if (builds.length === 0 || effectiveness >= 1) return [];
  const place = { code: 'WORKDAY-DISCOUNTED-TWICE', record: `work day ${id}` };
  return [
    aWarning({ ...place, field: 'effectiveness', value: effectiveness }, [
      `An hour of volunteers counts ${effectiveness} of one on ${builds.join(' and ')}, whose hours are volunteer rates already.`,
      'Give 1 for such work, and less only for work at staff rates.',
    ]),
  ];
}

function leaderProblems(view: FileView): Problem[] {
  const leads = [...view.pools, ...view.positions].some(({ tasks }) => tasks.includes('supervise'));
  const held = view.workDays.some(({ events }) => events > 0);
  if (leads || !held) return [];
  return [
    aWarning({ code: 'LABOR-NO-LEADERS', record: 'the file', field: 'pools' }, [
      'No pool and no position may supervise, so no work day can be held.',
      'Give supervise to the pool whose people lead work days.',
    ]),
  ];
}

function beforeStartProblems({ calendar }: FileView, position: PositionPart): Problem[] {
  const order = (id: string): number => calendar?.seasons.findIndex((s) => s.id === id) ?? -1;
  const start = order(position.startSeason);
  const early = Object.entries(position.firstYearHours).filter(
    ([season, hours]) => hours > 0 && order(season) >= 0 && order(season) < start,
  );
  return early.map(([season, hours]) =>
    anError(
      {
        code: 'POSITION-HOURS-BEFORE-START',
        record: `position ${position.id}`,
        field: `firstYearHours.${season}`,
        value: hours,
      },
      [
        `Work is said to be done in ${season}, before the start in ${position.startSeason}.`,
        'Leave out the seasons before the start.',
      ],
    ),
  );
}

function rampProblems(position: PositionPart): Problem[] {
  const over = Object.entries(position.firstYearHours).filter(
    ([season, hours]) => hours > (position.hours[season] ?? 0),
  );
  return over.map(([season, hours]) =>
    aWarning(
      {
        code: 'POSITION-FIRST-YEAR-FULLER',
        record: `position ${position.id}`,
        field: `firstYearHours.${season}`,
        value: hours,
      },
      [
        `The first year has ${hours} h in ${season}, more than the ${position.hours[season] ?? 0} h of a full year.`,
        'A new person gives less at first: check both numbers.',
      ],
    ),
  );
}
