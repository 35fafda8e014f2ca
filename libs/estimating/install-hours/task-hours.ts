/** A task of an installation: a quantity done at a rate. */
export interface Task {
  readonly name: string;
  /** The quantity, in the unit of the rate (sf, cu yd, plants, ft). */
  readonly quantity: number;
  /** Quantity per person-hour. Above 0. */
  readonly ratePerHour: number;
  /** Part of the work: `prepare` before the winter rest, `plant` after it. */
  readonly phase: 'prepare' | 'plant';
  /** What slows the task down, 1 for nothing (hand hauling). */
  readonly factor: number;
}

/** Person-hours of a task: quantity / rate x factor. Throws on a rate that is not above 0. */
export function taskHours({ name, quantity, ratePerHour, factor }: Task): number {
  if (!(ratePerHour > 0)) throw new RangeError(`the rate of ${name} must be above 0`);
  return (quantity / ratePerHour) * factor;
}

/** Person-hours of a phase, or of all tasks. */
export function hoursOf(tasks: readonly Task[], phase?: Task['phase']): number {
  const counted = phase ? tasks.filter((task) => task.phase === phase) : tasks;
  return counted.reduce((sum, task) => sum + taskHours(task), 0);
}
