import type { SeasonInstance } from '#domain/calendar.js';
import type { TaskClass } from '#domain/labor.js';
import { ageInSeason } from '#estimating/site-charges/life.js';
import {
  PROFILE_PARTS,
  type CareClass,
  type TypeProfile,
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
  const kept = new Map<TypeProfile, Map<number, CareHours>>();
  const hoursOf = (profile: TypeProfile, age: number) => {
    const byAge = kept.get(profile) ?? new Map<number, CareHours>();
    kept.set(profile, byAge);
    const hours = byAge.get(age) ?? careHours(profile, age, season);
    byAge.set(age, hours);
    return hours;
  };
  return columns.cohorts.flatMap(({ variable, life, profile, mostThousands }) => {
    const age = ageInSeason(columns.campus.calendar, life, season.index);
    return age < 1 ? [] : [{ variable, most: mostThousands, hours: hoursOf(profile, age) }];
  });
}

type CareHours = Readonly<Record<CareClass, number>>;

/** Hours for each thousand square feet at an age. */
function careHours(profile: TypeProfile, age: number, season: SeasonInstance): CareHours {
  const hours = (c: CareClass) => profile.care(c, age, season.order) / PROFILE_PARTS;
  return {
    'care-food': hours('care-food'),
    'care-other': hours('care-other'),
    harvest: hours('harvest'),
  };
}
