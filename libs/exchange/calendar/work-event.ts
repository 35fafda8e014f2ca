/** One all-day entry of the work year. Dates are ISO dates without a time zone. */
export interface WorkEvent {
  /** Tells the event from others, for good: the same work keeps it when its date changes. */
  readonly key: string;
  readonly kind: 'prepare' | 'plant' | 'care' | 'harvest' | 'order' | 'ask';
  readonly starts: string;
  /** The first day that no longer belongs to it. */
  readonly endsBefore: string;
  readonly summary: string;
  readonly description: string;
}

/** The ISO date `days` days later, or earlier where it is negative. */
export function addDays(date: string, days: number): string {
  const time = Date.parse(`${date}T00:00:00Z`) + days * 24 * 60 * 60 * 1000;
  return new Date(time).toISOString().slice(0, 10);
}
