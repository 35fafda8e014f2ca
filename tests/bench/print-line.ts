/**
 * Prints a JSON line for the bench that started this process. Lines wait in memory where the bench reads slowly: a
 * write that may not wait fails as soon as the pipe is full.
 */
export function printLine(line: object): void {
  process.stdout.write(`${JSON.stringify(line)}\n`);
}
