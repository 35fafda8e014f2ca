/** Where a command prints. */
export interface Output {
  /** Results. */
  out(line: string): void;
  /** Progress and warnings. */
  note(line: string): void;
  /** When the person began to wait, on the clock of `performance.now`. Left out: as the work begins. */
  readonly began?: number;
}

export const terminal: Output = {
  out: (line) => process.stdout.write(`${line}\n`),
  note: (line) => process.stderr.write(`${line}\n`),
  // The start of the process: on a busy machine it takes seconds to come here.
  began: 0,
};

export function asJson(value: unknown): string {
  return JSON.stringify(value, null, 2);
}
