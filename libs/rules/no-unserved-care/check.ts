import { seasonInstance, seasonLabel } from '#domain/calendar.js';
import type { Measure } from '../shortfall.js';

/** Hundredths of hours left unserved in the classes and seasons of the promise. */
export const unservedShortfall: Measure<'no-unserved-care'> = (campus, plan, test) => {
  const short = plan.unserved.filter((entry) => {
    const { season } = seasonInstance(campus.calendar, entry.season);
    const covered = test.seasons === 'all' || test.seasons.includes(season.id);
    return covered && test.classes.includes(entry.taskClass);
  });
  return {
    amount: short.reduce((sum, e) => sum + e.hours, 0),
    unit: 'hundredths of an hour',
    whole: 0,
    where: [
      ...new Set(
        short.map((e) => seasonLabel(campus.calendar, seasonInstance(campus.calendar, e.season))),
      ),
    ],
  };
};
