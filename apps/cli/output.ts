/** Where a command prints. */
export interface Output {
  /** Results. */
  out(line: string): void;
  /** Progress and warnings. */
  note(line: string): void;
}

export const terminal: Output = {
  out: (line) => process.stdout.write(`${line}\n`),
  note: (line) => process.stderr.write(`${line}\n`),
};

export function asJson(value: unknown): string {
  return JSON.stringify(value, null, 2);
}
