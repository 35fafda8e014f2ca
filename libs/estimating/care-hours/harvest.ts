export interface HarvestWork {
  readonly pounds: number;
  /** Pounds one person picks in an hour. Above 0. */
  readonly pickedPerHour: number;
  /** Pounds one person washes, weighs and writes down in an hour. Above 0. */
  readonly washedPerHour: number;
}

/** Hours to pick, wash and record: pounds / picking rate + pounds / washing rate. */
export function harvestHours({ pounds, pickedPerHour, washedPerHour }: HarvestWork): number {
  return pounds / pickedPerHour + pounds / washedPerHour;
}
