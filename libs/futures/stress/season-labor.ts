import { TASK_CLASSES, type TaskClass } from '#domain/labor.js';

const SETS = 1 << TASK_CLASSES.length;

/** Bit of a class of work. */
export function bitOf(taskClass: TaskClass): number {
  return 1 << TASK_CLASSES.indexOf(taskClass);
}

/** The bits of several classes. */
export function bitsOf(classes: readonly TaskClass[]): number {
  return classes.reduce((mask, c) => mask | bitOf(c), 0);
}

/**
 * Hours of one season by who may do what, in hundredths. For each set of classes it holds the hours of
 * all who may do any of it; by the theorem of Gale (1957) and Hoffman (1960) that is all one has to know to
 * tell how much can be served.
 */
export class SeasonLabor {
  private readonly reach = new Float64Array(SETS);

  clear(): void {
    this.reach.fill(0);
  }

  add(hours: number, mask: number): void {
    if (hours <= 0) return;
    for (let set = 1; set < SETS; set++) {
      if (set & mask) this.reach[set] = (this.reach[set] ?? 0) + hours;
    }
  }

  /**
   * The most hours that can be served of the needs of some classes, by index of class; others are left
   * out. Least over sets S of: hours that reach S, plus needs outside S.
   */
  most(needs: Float64Array, classes: number): number {
    let least = Infinity;
    for (let set = 0; set < SETS; set++) {
      if ((set & ~classes) !== 0) continue;
      let sum = this.reach[set] ?? 0;
      for (let c = 0; c < TASK_CLASSES.length; c++) {
        const bit = 1 << c;
        if (classes & bit && !(set & bit)) sum += needs[c] ?? 0;
      }
      if (sum < least) least = sum;
    }
    return least;
  }
}

/** Order in which work is served, as in a plan: what must be, food care, harvest, other care. */
export const SERVED: readonly number[] = [
  bitsOf(['prepare', 'plant', 'supervise']),
  bitOf('care-food'),
  bitOf('harvest'),
  bitOf('care-other'),
];
