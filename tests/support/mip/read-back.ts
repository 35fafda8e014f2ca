import type { Highs } from 'highs';
import { columnName, fileRows, rowTerms } from '#mip/file-names.js';
import type { Model } from '#mip/model.js';

/** A model by the names of its file, as it would be minimized. */
export interface NamedModel {
  readonly columns: Readonly<Record<string, NamedColumn>>;
  readonly rows: Readonly<Record<string, NamedRow>>;
}
interface NamedColumn {
  readonly cost: number;
  readonly lower: number;
  readonly upper: number;
  readonly whole: boolean;
}
interface NamedRow {
  readonly low: number;
  readonly high: number;
  readonly terms: Readonly<Record<string, number>>;
}

/** What HiGHS reads from the text of a model file. */
export function readBack(highs: Highs, format: 'mps' | 'lp', text: string): NamedModel {
  return highs.withModel({ format, data: text }, (native) => {
    const lp = native.getLp('csr');
    const flip = native.getObjectiveSense() === highs.constants.objectiveSense.maximize ? -1 : 1;
    const infinite = (v: number) => (Math.abs(v) >= highs.infinity ? Math.sign(v) * Infinity : v);
    const at = (list: ArrayLike<number>, i: number) => infinite(list[i] ?? NaN);
    const { starts, indices, values } = lp.matrix;
    const whole = (j: number) =>
      lp.integrality !== undefined && lp.integrality[j] !== highs.constants.variableType.continuous;
    const names = Array.from({ length: lp.numCols }, (_, j) => native.getColName(j));
    return {
      columns: Object.fromEntries(
        names.map((name, j) => [
          name,
          {
            cost: flip * at(lp.colCost, j) + 0,
            lower: at(lp.colLower, j),
            upper: at(lp.colUpper, j),
            whole: whole(j),
          },
        ]),
      ),
      rows: Object.fromEntries(
        Array.from({ length: lp.numRows }, (_, r) => {
          const terms = Array.from({ length: (starts[r + 1] ?? 0) - (starts[r] ?? 0) }, (__, k) => {
            const place = (starts[r] ?? 0) + k;
            return [names[indices[place] ?? 0] ?? '', values[place] ?? NaN] as const;
          }).filter(([, value]) => value !== 0);
          return [
            native.getRowName(r),
            { low: at(lp.rowLower, r), high: at(lp.rowUpper, r), terms: Object.fromEntries(terms) },
          ];
        }),
      ),
    };
  });
}

/** What a reader should find of a model. */
export function namedModel(model: Model): NamedModel {
  const flip = model.sense === 'maximize' ? -1 : 1;
  return {
    columns: Object.fromEntries(
      model.variables.map(({ column }) => [
        columnName(column),
        {
          cost: flip * (model.objective[column] ?? NaN) + 0,
          lower: model.lower[column] ?? NaN,
          upper: model.upper[column] ?? NaN,
          whole: model.kinds[column] !== 'continuous',
        },
      ]),
    ),
    rows: Object.fromEntries(
      fileRows(model).map(({ name, row, sense, side }) => [
        name,
        {
          low: sense === 'L' ? -Infinity : side,
          high: sense === 'G' ? Infinity : side,
          terms: Object.fromEntries(
            rowTerms(model, row).map(({ column, value }) => [columnName(column), value]),
          ),
        },
      ]),
    ),
  };
}
