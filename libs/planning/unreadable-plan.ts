/** A kept plan, or the campus that it was solved for, was written by a program that this one no longer reads. */
export class UnreadablePlanError extends Error {}
