import fc from 'fast-check';
import type { Model, Term, Variable, VariableKind } from '#mip/model.js';
import { ModelDraft } from '#mip/model-draft.js';

interface ColumnDraw {
  readonly kind: VariableKind;
  readonly lower: number;
  readonly width: number;
  readonly cost: number;
}
interface RowDraw {
  readonly coefficients: readonly number[];
  readonly side: number;
  readonly width: number;
}

/** What models are drawn from. */
interface Stock {
  readonly number: fc.Arbitrary<number>;
  /** Lower bounds of columns. */
  readonly lower: readonly number[];
}

/** Numbers of any digits, which must be read back to the last bit; readers drop those of no size. */
const ANY_NUMBER = fc.oneof(
  fc.integer({ min: -9, max: 9 }).map((v) => v + 0),
  fc.double({ min: -2e6, max: 2e6, noNaN: true }).map((v) => (Math.abs(v) < 1e-6 ? 0 : v)),
);
/** Quarters: no two sides lie so near that one solver's tolerance lets through what another's does not. */
const QUARTERS = fc.integer({ min: -40, max: 40 }).map((v) => v / 4 + 0);

export const ANY_MODEL: Stock = { number: ANY_NUMBER, lower: [0, 0, -3, 2, -Infinity] };
/** What every solver takes: the presolve of GLPK stops with an assertion on some free columns. */
export const TAME_MODEL: Stock = { number: QUARTERS, lower: [0, 0, -3, 2] };

/**
 * Small models with every kind of column and row: free, fixed, negative, without terms, between two
 * bounds. The objective is bounded by a row over all columns, so that an optimum can be told.
 */
export function randomModel(stock: Stock): fc.Arbitrary<Model> {
  const number = fc.oneof(fc.constant(0), stock.number);
  return fc
    .array(columnDraw(number, stock.lower), { minLength: 1, maxLength: 6 })
    .chain((columns) =>
      fc.record({
        columns: fc.constant(columns),
        rows: fc.array(rowDraw(number, columns.length), { maxLength: 5 }),
        sense: fc.constantFrom('maximize' as const, 'minimize' as const),
      }),
    )
    .map(modelOf);
}

interface ModelDraw {
  readonly columns: readonly ColumnDraw[];
  readonly rows: readonly RowDraw[];
  readonly sense: 'maximize' | 'minimize';
}

function columnDraw(
  cost: fc.Arbitrary<number>,
  lower: readonly number[],
): fc.Arbitrary<ColumnDraw> {
  return fc.record({
    kind: fc.constantFrom('binary', 'integer', 'continuous'),
    lower: fc.constantFrom(...lower),
    width: fc.constantFrom(0, 1, 5, 8.5, Infinity),
    cost,
  });
}

function rowDraw(number: fc.Arbitrary<number>, columns: number): fc.Arbitrary<RowDraw> {
  return fc.record({
    coefficients: fc.array(number, { minLength: columns, maxLength: columns }),
    side: number,
    width: fc.constantFrom(0, 4, 7.25, Infinity, -Infinity),
  });
}

function modelOf({ columns, rows, sense }: ModelDraw): Model {
  const draft = new ModelDraft();
  const variables = columns.map((c, i) => draft.addVariable(columnSpec(c, i)));
  rows.forEach(({ coefficients, side, width }, i) => {
    const terms = termsOf(variables, coefficients);
    draft.addRow({ label: `row ${i}: é`, terms, ...rowBounds(side, width) });
  });
  const objective = termsOf(
    variables,
    columns.map((c) => c.cost),
  );
  draft.addRow({ label: 'bounded', terms: objective, atLeast: -1000, atMost: 1000 });
  return draft.build(sense, objective);
}

function columnSpec({ kind, lower, width }: ColumnDraw, place: number) {
  const label = `column ${place}`;
  if (kind === 'binary') return { label, kind };
  const from = kind === 'integer' && lower === -Infinity ? -20 : lower;
  const upper = from === -Infinity ? width : from + width;
  const whole = kind === 'integer' ? Math.floor(upper) : upper;
  return { label, kind, lower: from, upper: whole };
}

function rowBounds(side: number, width: number): { atLeast?: number; atMost?: number } {
  if (width === Infinity) return { atLeast: side };
  if (width === -Infinity) return { atMost: side };
  return { atLeast: side, atMost: side + width };
}

function termsOf(variables: readonly Variable[], coefficients: readonly number[]): Term[] {
  return variables.map((variable, i) => ({ variable, coefficient: coefficients[i] ?? 0 }));
}
