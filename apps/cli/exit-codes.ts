/** What the command's exit code says. */
export const EXIT = {
  fine: 0,
  /** A file or an argument is not usable; every problem was printed. */
  badInput: 2,
  /** A plan does not pass its checks, or a document its release check. */
  checkFailed: 3,
  /** It is proven that no plan can exist. */
  noPlan: 4,
  /** The solve ended before it found a plan. */
  stoppedWithoutPlan: 5,
} as const;

/** A failure that a user can put right: printed in full, then the process ends with the code. */
export class CommandFailure extends Error {
  constructor(
    readonly exitCode: number,
    readonly lines: readonly string[],
  ) {
    super(lines[0] ?? 'failed');
  }
}
