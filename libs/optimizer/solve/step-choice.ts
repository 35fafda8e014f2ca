/** One way of making a plan better, for as long as it is given. */
export interface Step {
  /** Seconds of one turn. */
  readonly seconds: number;
  run(seconds: number): void;
}

export interface Turns {
  readonly steps: readonly Step[];
  /** What the plan is worth now; it never falls. */
  readonly worth: () => number;
  readonly elapsed: () => number;
  /** Seconds left; no turn begins at 0 or below. */
  readonly left: () => number;
  readonly done: () => boolean;
}

/**
 * Gives turns to steps: each once, then always to the one that gained most for each second in its last
 * turn. Where none gains any more, they take turns in their order.
 */
export function takeTurns({ steps, worth, elapsed, left, done }: Turns): void {
  const rates = steps.map(() => Infinity);
  for (let turn = 0; !done() && left() > 0; turn++) {
    const best = rates.indexOf(Math.max(...rates));
    const chosen = (rates[best] ?? 0) > 0 ? best : turn % steps.length;
    const step = steps[chosen];
    if (!step) return;
    const began = elapsed();
    const before = worth();
    step.run(Math.min(step.seconds, left()));
    rates[chosen] = (worth() - before) / Math.max(0.1, elapsed() - began);
  }
}
