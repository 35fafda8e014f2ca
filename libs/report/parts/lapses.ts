import type { LapseRow } from '#explain/overview/plan-overview.js';
import { dollarsInWords } from '#units/in-words.js';

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

/** The name of a fund up to its first comma: what follows are its terms. */
function clause(name: string): string {
  return name.split(',')[0] ?? name;
}
