import { availableParallelism } from 'node:os';

/** Threads side by side at the most; more would only wait for the same cores on common machines. */
export const MOST_THREADS = Math.max(1, Math.min(2, availableParallelism()));

/** Seconds that a solving thread may take to end after it was asked to stop, before it is ended. */
export const GRACE_SECONDS = 3;
