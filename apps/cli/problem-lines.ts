import type { Problem } from '#domain/problem.js';

/** Problems as a person reads them: the record and field, what is wrong, what to do. */
export function problemLines(problems: readonly Problem[]): string[] {
  return problems.map((p) => {
    const place = p.field === '' ? p.record : `${p.record}, ${p.field}`;
    return `  ${p.severity === 'error' ? 'error  ' : 'warning'} ${p.code}  ${place}: ${p.problem} ${p.remedy}`;
  });
}

/** `1 error`, `3 warnings`. */
export function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? '' : 's'}`;
}
