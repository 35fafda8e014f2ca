import { capturedGallons, type Catchment } from './rain.js';

export interface Tank {
  readonly gallons: number;
  readonly openingGallons: number;
}

export interface TankDayInput {
  readonly rainInches: number;
  readonly demandGallons: number;
}

/** opening + captured = supplied + overflow + closing; demand = supplied + unmet. */
export interface TankDay {
  readonly captured: number;
  readonly supplied: number;
  readonly unmet: number;
  readonly overflow: number;
  readonly closing: number;
}

/**
 * Balance of a rain tank over a given series of days. Rain comes in, then water is drawn, then what is
 * above the brim is lost (yield before spillage). Not for food plants without treatment.
 */
export function tankBalance(
  days: readonly TankDayInput[],
  tank: Tank,
  catchment: Catchment,
): TankDay[] {
  let stored = tank.openingGallons;
  return days.map(({ rainInches, demandGallons }) => {
    const captured = capturedGallons(rainInches, catchment);
    const supplied = Math.min(demandGallons, stored + captured);
    const left = stored + captured - supplied;
    stored = Math.min(left, tank.gallons);
    return {
      captured,
      supplied,
      unmet: demandGallons - supplied,
      overflow: left - stored,
      closing: stored,
    };
  });
}

/** Part of the demand that the tank met over the series; 1 where nothing was asked for. */
export function demandMet(days: readonly TankDay[]): number {
  const supplied = days.reduce((sum, day) => sum + day.supplied, 0);
  const unmet = days.reduce((sum, day) => sum + day.unmet, 0);
  return supplied + unmet === 0 ? 1 : supplied / (supplied + unmet);
}
