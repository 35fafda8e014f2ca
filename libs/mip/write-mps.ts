import { columnName, fileRows, legend, numberText, rowTerms } from './file-names.js';
import type { Model } from './model.js';

const OBJECTIVE = 'obj';

/**
 * A model as free-format MPS text. The fixed format has twelve characters for a number, too few for a
 * double; every number here reads back exactly. MPS files are minimized, so the objective of a model
 * that maximizes is written negated, and a comment says so.
 */
export function writeMps(model: Model): string {
  const rows = fileRows(model);
  return [
    ...(model.sense === 'maximize'
      ? ['* To be maximized: the objective is negated, since MPS files are minimized.']
      : []),
    ...legend(model, '*'),
    'NAME model FREE',
    'ROWS',
    ` N ${OBJECTIVE}`,
    ...rows.map(({ sense, name }) => ` ${sense} ${name}`),
    'COLUMNS',
    ...columnLines(model),
    'RHS',
    ...rows.filter(({ side }) => side !== 0).map((r) => ` rhs ${r.name} ${numberText(r.side)}`),
    'BOUNDS',
    ...model.variables.flatMap(({ column }) => boundLines(model, column)),
    'ENDATA',
    '',
  ].join('\n');
}

/** Every column stands in the file, also one without terms: by its objective of 0. */
function columnLines(model: Model): string[] {
  const terms = termsByColumn(model);
  const flip = model.sense === 'maximize' ? -1 : 1;
  const lines: string[] = [];
  let whole = false;
  const turn = () => {
    whole = !whole;
    lines.push(` m${lines.length} 'MARKER' '${whole ? 'INTORG' : 'INTEND'}'`);
  };
  for (const { column } of model.variables) {
    if (isWhole(model, column) !== whole) turn();
    const cost = flip * (model.objective[column] ?? 0);
    const entries = terms[column] ?? [];
    const name = columnName(column);
    if (cost !== 0 || entries.length === 0) lines.push(` ${name} ${OBJECTIVE} ${numberText(cost)}`);
    lines.push(...entries.map(({ row, value }) => ` ${name} ${row} ${numberText(value)}`));
  }
  if (whole) turn();
  return lines;
}

function termsByColumn(model: Model): { row: string; value: number }[][] {
  const terms: { row: string; value: number }[][] = model.variables.map(() => []);
  for (const { name, row } of fileRows(model)) {
    for (const { column, value } of rowTerms(model, row)) terms[column]?.push({ row: name, value });
  }
  return terms;
}

/** Bounds of whole columns are always written: readers differ in what they take for granted. */
function boundLines(model: Model, column: number): string[] {
  const lower = model.lower[column] ?? 0;
  const upper = model.upper[column] ?? Infinity;
  const name = columnName(column);
  if (lower === upper) return [` FX bnd ${name} ${numberText(lower)}`];
  if (lower === -Infinity && upper === Infinity) return [` FR bnd ${name}`];
  const low =
    lower === -Infinity
      ? [` MI bnd ${name}`]
      : lower === 0
        ? []
        : [` LO bnd ${name} ${numberText(lower)}`];
  if (upper < Infinity) return [...low, ` UP bnd ${name} ${numberText(upper)}`];
  return isWhole(model, column) ? [...low, ` PL bnd ${name}`] : low;
}

function isWhole(model: Model, column: number): boolean {
  return model.kinds[column] !== 'continuous';
}
