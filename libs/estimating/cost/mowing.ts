export interface Mowing {
  readonly turfSqFt: number;
  readonly cutsPerYear: number;
  readonly hoursPer1000SqFtCut: number;
  readonly gallonsPerHour: number;
  readonly kgCarbonPerGallon: number;
}

export interface MowingAvoided {
  readonly hours: number;
  readonly gallons: number;
  readonly kgCarbon: number;
}

/** What is no longer mowed in a year: area / 1,000 x cuts x hours, then fuel, then carbon dioxide. */
export function mowingAvoided(mowing: Mowing): MowingAvoided {
  const hours = (mowing.turfSqFt / 1000) * mowing.cutsPerYear * mowing.hoursPer1000SqFtCut;
  const gallons = hours * mowing.gallonsPerHour;
  return { hours, gallons, kgCarbon: gallons * mowing.kgCarbonPerGallon };
}

/** Mowing avoided beside care added, so that the one is never shown as paying for the other. */
export interface MowingBesideCare extends MowingAvoided {
  readonly careHoursAdded: number;
  readonly netHoursAdded: number;
}

export function mowingBesideCare(mowing: Mowing, careHoursAdded: number): MowingBesideCare {
  const avoided = mowingAvoided(mowing);
  return { ...avoided, careHoursAdded, netHoursAdded: careHoursAdded - avoided.hours };
}
