import type { Weather } from '#domain/weather.js';
import type { CampusFile } from '../campus-file.schema.js';
import { optional } from './values.js';

export function toWeather({
  source,
  months,
  dailyRain,
}: NonNullable<CampusFile['weather']>): Weather {
  return {
    source,
    months: months.map(({ evapotranspirationInches, rainInches }) => ({
      referenceInches: evapotranspirationInches,
      rainInches,
    })),
    ...optional('daily', dailyRain),
  };
}
