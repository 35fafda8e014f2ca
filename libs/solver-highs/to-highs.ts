import type { Highs, ModelData } from 'highs';
import type { Model } from '#mip/model.js';

/** A model in the solver's own form; relaxed, every column may take fractions. */
export function toHighs(highs: Highs, model: Model, as: 'whole' | 'relaxed'): ModelData {
  const { variableType, objectiveSense } = highs.constants;
  const integer = (kind: string) =>
    kind === 'continuous' ? variableType.continuous : variableType.integer;
  return {
    numCols: model.variables.length,
    numRows: model.rowLabels.length,
    sense: model.sense === 'maximize' ? objectiveSense.maximize : objectiveSense.minimize,
    colCost: model.objective,
    colLower: model.lower.map((v) => finite(highs, v)),
    colUpper: model.upper.map((v) => finite(highs, v)),
    rowLower: model.rowLower.map((v) => finite(highs, v)),
    rowUpper: model.rowUpper.map((v) => finite(highs, v)),
    matrix: {
      format: 'csr',
      numRows: model.rowLabels.length,
      numCols: model.variables.length,
      starts: model.rows.starts,
      indices: model.rows.columns,
      values: model.rows.values,
    },
    ...(as === 'relaxed' ? {} : { integrality: model.kinds.map(integer) }),
  };
}

/** A bound as the solver writes it, which has a number of its own for no bound. */
export function finite(highs: Highs, bound: number): number {
  return Number.isFinite(bound) ? bound : Math.sign(bound) * highs.infinity;
}
