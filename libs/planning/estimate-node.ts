import { DEFAULTS } from '#estimating/defaults/defaults.data.js';
import type { DefaultRow } from '#estimating/defaults/row.js';
import type { ExplainedNode } from '#estimating/explained.js';
import { measureIn, type UnitSystem } from '#units/measure.js';

/** A node and all it was made of, in the units of a reader. Formulas and names keep their words. */
export function nodeIn(units: UnitSystem, node: ExplainedNode): ExplainedNode {
  if (units === 'us') return node;
  return {
    ...node,
    ...measureIn(units, node),
    formula: formulaIn(units, node),
    inputs: node.inputs.map((input) => nodeIn(units, input)),
  };
}

/** The formula of a default states its range, which has to be in the unit of its value. */
function formulaIn(units: UnitSystem, { name, formula }: ExplainedNode): string {
  const row = (DEFAULTS as Readonly<Record<string, DefaultRow>>)[name];
  if (!row || !formula.startsWith('default, ')) return formula;
  const [low, high] = [row.low, row.high].map((value) => {
    const told = measureIn(units, { value, unit: row.unit }).value ?? value;
    return String(Number(told.toPrecision(SIGNIFICANT_DIGITS)));
  });
  return `default, ${low} to ${high}`;
}

const SIGNIFICANT_DIGITS = 4;
