/** One place of a file that names another record. */
export interface Reference {
  readonly record: string;
  readonly field: string;
  readonly to: string;
}
