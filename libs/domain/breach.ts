/** A rule that a finished plan breaks, with the numbers. Data, not an exception. */
export interface Breach {
  /** Folder name of the rule in libs/rules. */
  readonly rule: string;
  /** The record: a site, fund, season or commitment, as a reader would name it. */
  readonly record: string;
  /** What is wrong, in one sentence with its numbers. */
  readonly message: string;
}
