import type { Breach } from '#domain/breach.js';
import type { Problem } from '#domain/problem.js';

/** Problems as a person reads them: the record and field, what is wrong, what to do. */
export function problemLines(problems: readonly Problem[]): string[] {
  return problems.map((p) => {
    const place = p.field === '' ? p.record : `${p.record}, ${p.field}`;
    return `  ${p.severity === 'error' ? 'error  ' : 'warning'} ${p.code}  ${place}: ${p.problem} ${p.remedy}`;
  });
}

/** Breaches as a person reads them: the rule, the record, and what is wrong. */
export function breachLines(breaches: readonly Breach[]): string[] {
  return breaches.map((b) => `  ${b.rule}  ${b.record}: ${b.message}`);
}

/** `1 error`, `3 warnings`. */
export function counted(count: number, noun: string, plural = `${noun}s`): string {
  return `${count} ${count === 1 ? noun : plural}`;
}
