/** What a peer had found at some moment; what it does not tell is left out. In the model's sense. */
export interface Moment {
  /** Seconds since its process was started. */
  readonly seconds: number;
  readonly objective?: number;
  readonly bound?: number;
}

/** How a peer's run went. */
export interface PeerRun {
  readonly ended: 'optimal' | 'stopped' | 'infeasible' | 'failed';
  readonly objective?: number;
  readonly bound?: number;
  readonly seconds: number;
  /** Largest resident memory of its process, in MiB; left out where the system does not say. */
  readonly peakMiB?: number;
  readonly moments: readonly Moment[];
}

/** The last value that was told. */
export function lastOf(
  moments: readonly Moment[],
  what: 'objective' | 'bound',
): number | undefined {
  return moments.findLast((moment) => moment[what] !== undefined)?.[what];
}

/** A number in a log; what is none, or stands for infinity, is left out. */
export function numberIn(text: string | undefined): number | undefined {
  const value = Number(text);
  return text !== undefined && Number.isFinite(value) && Math.abs(value) < 1e40 ? value : undefined;
}

/** Leaves out what is not known, so that it is never taken for zero. */
export function known<T extends object>(values: T): { [K in keyof T]?: NonNullable<T[K]> } {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: NonNullable<T[K]>;
  };
}
