import { anError, type Problem, type ProblemText } from '#domain/problem.js';
import { rightHanded } from '../geojson/winding.js';
import type { CellKind, SiteColumn } from './site-columns.data.js';
import { readNumber } from './read-number.js';
import { fromWkt } from './wkt.js';

export type CellReading =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly code: string; readonly text: ProblemText };

/** A field without a value: it is taken out of the record. */
export const NO_VALUE = Symbol('no value');

/**
 * The value that a cell states, as a campus file holds it. The cell is not blank. Whether the value
 * may be so is judged with the whole campus.
 */
export function readCell(text: string, column: SiteColumn): CellReading {
  const word = text.trim().toLowerCase();
  if (column.mayBeUnknown && word === 'unknown') return value('unknown');
  if (column.mayBeNone && word === 'none') return value(NO_VALUE);
  const failed = spreadsheetError(text.trim());
  return failed ?? READERS[column.kind](text, column);
}

/** The problem of one cell, named by its column. */
export function cellProblem(
  record: string,
  at: { readonly column: SiteColumn; readonly text: string },
  { code, text }: { readonly code: string; readonly text: ProblemText },
): Problem {
  const value = at.text.length > 80 ? `${at.text.slice(0, 77)}...` : at.text;
  return anError({ code, record, field: at.column.header, value }, text);
}

type Reader = (text: string, column: SiteColumn) => CellReading;

const READERS: Readonly<Record<CellKind, Reader>> = {
  id: (text) => value(text.trim()),
  stage: (text) => value(text.trim().toLowerCase()),
  text: (text) => value(text),
  number: readNumber,
  flag: readFlag,
  ids: (text) => value(listOf(text)),
  year: (text) => value(text.trim()),
  lines: (text) => value(text.split(/\r\n|\r|\n/)),
  boundary: (text) => readBoundary(text),
  gates: (text) => value(listOf(text)),
};

function value(read: unknown): CellReading {
  return { ok: true, value: read };
}

function listOf(text: string): string[] {
  return text
    .split(/[;,|\n]/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
}

function readFlag(text: string, { mayBeUnknown }: SiteColumn): CellReading {
  const word = text.trim().toLowerCase();
  if (['yes', 'true', 'y', '1'].includes(word)) return value(true);
  if (['no', 'false', 'n', '0'].includes(word)) return value(false);
  return {
    ok: false,
    code: 'CELL-NOT-YES-OR-NO',
    text: [
      `"${text.trim()}" is neither yes nor no.`,
      mayBeUnknown ? 'Write yes, no or unknown.' : 'Write yes or no.',
    ],
  };
}

function spreadsheetError(text: string): CellReading | undefined {
  if (!/^#(?:N\/A|REF!|VALUE!|NAME\?|DIV\/0!|NUM!|NULL!|SPILL!|CALC!)/i.test(text))
    return undefined;
  return {
    ok: false,
    code: 'CELL-SPREADSHEET-ERROR',
    text: [
      `${text} is an error of a spreadsheet formula, not a value.`,
      'Mend the formula, or write the value itself.',
    ],
  };
}

function readBoundary(text: string): CellReading {
  const reading = fromWkt(text);
  if (reading.ok) return value({ type: 'Polygon', coordinates: rightHanded(reading.rings) });
  const said: Record<typeof reading.cause, ProblemText> = {
    multipolygon: [
      'The boundary is of several pieces.',
      'Give each piece a site of its own: a site is one piece of ground.',
    ],
    'other-shape': [
      'The boundary is no polygon.',
      'Write POLYGON ((longitude latitude, ...)), the last position the same as the first.',
    ],
    broken: [
      'The boundary is cut off, or a position in it is not two numbers.',
      'Write POLYGON ((longitude latitude, ...)) in degrees with decimal points.',
    ],
  };
  return { ok: false, code: 'CELL-BOUNDARY', text: said[reading.cause] };
}
