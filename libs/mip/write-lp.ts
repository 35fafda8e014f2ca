import { columnName, fileRows, legend, numberText, rowTerms } from './file-names.js';
import type { Model } from './model.js';

const ITEMS_ON_A_LINE = 8;
const SIGNS = { E: '=', L: '<=', G: '>=' } as const;

/** A model as CPLEX-LP text. Every number reads back exactly. */
export function writeLp(model: Model): string {
  const columns = model.variables.map(({ column }) => column);
  const whole = (column: number) => model.kinds[column] !== 'continuous';
  return [
    ...legend(model, '\\'),
    model.sense === 'maximize' ? 'Maximize' : 'Minimize',
    ...expression('obj', objectiveTerms(model)),
    'Subject To',
    ...fileRows(model).flatMap(({ name, row, sense, side }) =>
      expression(name, rowTerms(model, row), ` ${SIGNS[sense]} ${numberText(side)}`),
    ),
    'Bounds',
    ...columns.flatMap((column) => boundLine(model, column)),
    ...section(
      'Generals',
      columns.filter((c) => whole(c) && !isBinary(model, c)),
    ),
    ...section(
      'Binaries',
      columns.filter((c) => isBinary(model, c)),
    ),
    'End',
    '',
  ].join('\n');
}

interface ColumnTerm {
  readonly column: number;
  readonly value: number;
}

/** Columns in no row are named here with 0: one that is named nowhere would be lost. */
function objectiveTerms(model: Model): ColumnTerm[] {
  const inRows = new Set(
    fileRows(model).flatMap(({ row }) => rowTerms(model, row).map(({ column }) => column)),
  );
  return [...model.objective.entries()]
    .map(([column, value]) => ({ column, value }))
    .filter(({ column, value }) => value !== 0 || !inRows.has(column));
}

/** An expression may not be empty: 0 of the first column stands for no terms. */
function expression(name: string, terms: readonly ColumnTerm[], end = ''): string[] {
  const shown = terms.length > 0 ? terms : [{ column: 0, value: 0 }];
  const words = shown.map(
    ({ column, value }) =>
      `${value < 0 ? '-' : '+'} ${numberText(Math.abs(value))} ${columnName(column)}`,
  );
  const lines = inLines(words);
  return lines.map(
    (line, i) => `${i === 0 ? ` ${name}: ` : '   '}${line}${i === lines.length - 1 ? end : ''}`,
  );
}

function boundLine(model: Model, column: number): string[] {
  const lower = model.lower[column] ?? 0;
  const upper = model.upper[column] ?? Infinity;
  const name = columnName(column);
  if (isBinary(model, column)) return [];
  if (lower === upper) return [` ${name} = ${numberText(lower)}`];
  if (lower === -Infinity && upper === Infinity) return [` ${name} free`];
  const low = lower === -Infinity ? '-inf' : numberText(lower);
  if (upper < Infinity) return [` ${low} <= ${name} <= ${numberText(upper)}`];
  return lower === 0 ? [] : [` ${name} >= ${low}`];
}

function isBinary({ kinds, lower, upper }: Model, column: number): boolean {
  return kinds[column] !== 'continuous' && lower[column] === 0 && upper[column] === 1;
}

function section(title: string, columns: readonly number[]): string[] {
  if (columns.length === 0) return [];
  return [title, ...inLines(columns.map(columnName)).map((line) => ` ${line}`)];
}

function inLines(words: readonly string[]): string[] {
  return Array.from({ length: Math.ceil(words.length / ITEMS_ON_A_LINE) }, (_, i) =>
    words.slice(i * ITEMS_ON_A_LINE, (i + 1) * ITEMS_ON_A_LINE).join(' '),
  );
}
