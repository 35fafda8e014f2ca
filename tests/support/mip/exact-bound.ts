import { rowTerms } from '#mip/file-names.js';
import type { Model } from '#mip/model.js';

/** A fraction; doubles are fractions of a power of two, so nothing is rounded on the way in. */
interface Fraction {
  readonly top: bigint;
  /** Above 0. */
  readonly bottom: bigint;
}

const NONE: Fraction = { top: 0n, bottom: 1n };

function fraction(value: number): Fraction {
  let [top, bottom] = [value, 1n];
  while (!Number.isInteger(top)) [top, bottom] = [top * 2, bottom * 2n];
  return { top: BigInt(top), bottom };
}

function plus(a: Fraction, b: Fraction): Fraction {
  return reduced(a.top * b.bottom + b.top * a.bottom, a.bottom * b.bottom);
}

function times(a: Fraction, b: Fraction): Fraction {
  return reduced(a.top * b.top, a.bottom * b.bottom);
}

function reduced(top: bigint, bottom: bigint): Fraction {
  const divisor = common(top < 0n ? -top : top, bottom);
  return { top: top / divisor, bottom: bottom / divisor };
}

function common(a: bigint, b: bigint): bigint {
  return b === 0n ? a : common(b, a % b);
}

/**
 * The bound that prices of the rows prove for a model that maximizes. Prices too small to be more than
 * rounding, and those whose row has no such bound, are taken as 0, which proves no less truly. Columns
 * without an upper bound get the one that a row of non-negative terms gives them.
 */
export function exactBound(model: Model, prices: ArrayLike<number>): number {
  const kept = [...model.rowLabels.keys()].map((row) => usable(model, row, prices[row] ?? 0));
  const left = model.variables.map(({ column }) => fraction(model.objective[column] ?? 0));
  let bound = NONE;
  kept.forEach((price, row) => {
    if (price === 0) return;
    const side = (price > 0 ? model.rowUpper[row] : model.rowLower[row]) ?? NaN;
    bound = plus(bound, times(fraction(price), fraction(side)));
    for (const { column, value } of rowTerms(model, row)) {
      left[column] = plus(left[column] ?? NONE, times(fraction(-price), fraction(value)));
    }
  });
  const upper = impliedUpper(model);
  left.forEach((worth, column) => {
    if (worth.top === 0n) return;
    const side = worth.top > 0n ? upper[column] : model.lower[column];
    if (!Number.isFinite(side)) throw new Error(`column ${column} has no bound to be priced at`);
    bound = plus(bound, times(worth, fraction(side ?? NaN)));
  });
  return Number((bound.top * 10n ** 12n) / bound.bottom) / 1e12;
}

function usable({ rowLower, rowUpper }: Model, row: number, price: number): number {
  const side = price > 0 ? rowUpper[row] : rowLower[row];
  return Math.abs(price) < 1e-12 || !Number.isFinite(side) ? 0 : price;
}

/** Upper bounds, and where there is none what rows leave to a column: x <= (side - the least of the others) / a. */
function impliedUpper(model: Model): number[] {
  const upper = [...model.upper];
  for (let again = true; again;) {
    again = false;
    for (const row of model.rowLabels.keys()) {
      for (const { sign, side } of sidesOf(model, row)) {
        if (tightenBy(model, upper, { row, sign, side })) again = true;
      }
    }
  }
  return upper;
}

/** A row as `sign x terms <= side`, once for each bound that it has. */
function sidesOf({ rowLower, rowUpper }: Model, row: number) {
  return [
    { sign: 1, side: rowUpper[row] ?? Infinity },
    { sign: -1, side: -(rowLower[row] ?? -Infinity) },
  ].filter(({ side }) => Number.isFinite(side));
}

function tightenBy(
  model: Model,
  upper: number[],
  { row, sign, side }: { readonly row: number; readonly sign: number; readonly side: number },
): boolean {
  const terms = rowTerms(model, row).map(({ column, value }) => ({ column, value: sign * value }));
  const least = (t: { column: number; value: number }) =>
    t.value * ((t.value > 0 ? model.lower[t.column] : upper[t.column]) ?? 0);
  const open = terms.filter((t) => t.value > 0 && upper[t.column] === Infinity);
  for (const term of open) {
    const others = terms.filter((t) => t !== term).reduce((sum, t) => sum + least(t), 0);
    // Rounded up, so that the bound stays one.
    if (Number.isFinite(others))
      upper[term.column] = ((side - others) / term.value) * (1 + 1e-9) + 1e-9;
  }
  return open.some(({ column }) => upper[column] !== Infinity);
}
