import { anError, type Problem } from '#domain/problem.js';
import { lineAndColumn, scanJson } from './json-scan.js';

export type JsonReading =
  | { readonly ok: true; readonly value: unknown; readonly problems: readonly Problem[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Reads a JSON text. A key given twice is an error too: the first value would be lost in silence. */
export function readJsonText(given: string): JsonReading {
  const text = given.replace(/^\uFEFF/, '');
  const scan = scanJson(text);
  const twice = scan.twice.map(({ key, offset }) => keyTwice(text, { key, offset }));
  if (scan.brokenAt !== undefined) return { ok: false, problems: [broken(text, scan.brokenAt)] };
  return { ok: true, value: JSON.parse(text) as unknown, problems: twice };
}

function broken(text: string, offset: number): Problem {
  const { line, column } = lineAndColumn(text, offset);
  const found = offset >= text.length ? 'the text ends' : `${shown(text, offset)} does not belong`;
  return anError(
    { code: 'FILE-NOT-JSON', record: 'the file', field: `line ${line}, column ${column}` },
    [
      `This is not JSON: ${found} at line ${line}, column ${column}.`,
      'Look there, and just before, for a missing or extra comma, quote, bracket or brace.',
    ],
  );
}

function keyTwice(text: string, { key, offset }: { key: string; offset: number }): Problem {
  const { line } = lineAndColumn(text, offset);
  return anError(
    { code: 'FILE-KEY-TWICE', record: 'the file', field: key, value: `line ${line}` },
    [
      `The field ${key} is given a second time in one record, at line ${line}.`,
      'Keep one of the two.',
    ],
  );
}

function shown(text: string, offset: number): string {
  const piece = /^(?:"[^"\n]{0,30}"?|\S{1,12})/.exec(text.slice(offset, offset + 40))?.[0];
  return piece ?? 'the end of the line';
}
