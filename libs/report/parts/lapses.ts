import type { LapseRow, PaybackRow } from '#explain/overview/plan-overview.js';
import { dollarsInWords, listInWords } from '#units/in-words.js';

/** Given money that is left unspent, each gift once; empty where there is none. */
export function lapsesInWords(lapses: readonly LapseRow[]): string {
  const names = [...new Set(lapses.map(({ name }) => name))];
  if (names.length === 0) return '';
  const parts = names.map((name) => {
    const of = lapses.filter((lapse) => lapse.name === name);
    const sum = of.reduce((total, { dollars }) => total + dollars, 0);
    return `${dollarsInWords(sum)} of ${clause(name)} (by ${of.at(-1)?.year ?? ''})`;
  });
  return ` Given money left unspent: ${parts.join('; ')}.`;
}

/** What reimbursable grants pay back, each grant once; empty where there is none. */
export function paybacksInWords(paybacks: readonly PaybackRow[]): string {
  const names = [...new Set(paybacks.map(({ name }) => name))];
  if (names.length === 0) return '';
  const parts = names.map((name) => {
    const of = paybacks.filter((payback) => payback.name === name);
    const sum = of.reduce((total, { dollars }) => total + dollars, 0);
    const years = listInWords([...new Set(of.map(({ year }) => year))]);
    return `${dollarsInWords(sum)} by ${clause(name)} (in ${years})`;
  });
  return ` Spent first and paid back later: ${parts.join('; ')}.`;
}

/** The name of a fund up to its first comma: what follows are its terms. */
function clause(name: string): string {
  return name.split(',')[0] ?? name;
}
