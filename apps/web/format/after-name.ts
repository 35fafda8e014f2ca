import { capitalized } from './numbers.js';

/** A sentence of a table's row without the name that the row begins with already. */
export function afterName(sentence: string, name: string): string {
  const start = `${name}: `.toLowerCase();
  return sentence.toLowerCase().startsWith(start)
    ? capitalized(sentence.slice(start.length))
    : sentence;
}
