import type { SeasonInstance } from '#domain/calendar.js';
import type { TaskClass } from '#domain/labor.js';
import { ageInSeason } from '#estimating/site-charges/life.js';
import {
  CARE_CLASSES,
  PROFILE_PARTS,
  type CareClass,
} from '#estimating/site-charges/type-profile.js';
import type { Variable } from '#mip/model.js';
import type { Columns } from '../columns.js';

/** Hours that one unit of a column asks for, by class, and the most units that it may have. */
export interface Asked {
  readonly variable: Variable;
  readonly most: number;
  readonly hours: Readonly<Partial<Record<TaskClass, number>>>;
}

/** What lives ask for in the seasons in which they are prepared and planted. */
export function installBySeason(columns: Columns): Map<number, Asked[]> {
  const seasons = new Map<number, Asked[]>();
  const ask = (season: number, asked: Asked) => {
    const list = seasons.get(season);
    if (list) list.push(asked);
    else seasons.set(season, [asked]);
  };
  for (const { variable, parts } of columns.lifecycles) {
    for (const { life, charges } of parts) {
      if (life.prepared !== undefined) {
        ask(life.prepared, { variable, most: 1, hours: { prepare: charges.prepareHours / 100 } });
      }
      ask(life.planted, { variable, most: 1, hours: { plant: charges.plantHours / 100 } });
    }
  }
  return seasons;
}

/** What the ground of each cohort asks for in a season. */
export function careAsked(columns: Columns, season: SeasonInstance): Asked[] {
  return columns.cohorts.flatMap(({ variable, life, profile, mostThousands }) => {
    const age = ageInSeason(columns.campus.calendar, life, season.index);
    if (age < 1) return [];
    const hours = (c: CareClass) => profile.care(c, age, season.order) / PROFILE_PARTS;
    const byClass = Object.fromEntries(CARE_CLASSES.map((c) => [c, hours(c)]));
    return [{ variable, most: mostThousands, hours: byClass }];
  });
}
