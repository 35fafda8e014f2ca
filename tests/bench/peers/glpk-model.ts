import type { GLPK, LP } from 'glpk.js/node';
import { columnName, fileRows, rowTerms } from '#mip/file-names.js';
import type { Model } from '#mip/model.js';

/** A model in the terms of glpk.js. */
export function glpkModel(glpk: GLPK, model: Model): LP {
  return {
    name: 'model',
    objective: {
      direction: model.sense === 'maximize' ? glpk.GLP_MAX : glpk.GLP_MIN,
      name: 'obj',
      vars: model.variables.map(({ column }) => ({
        name: columnName(column),
        coef: model.objective[column] ?? 0,
      })),
    },
    subjectTo: fileRows(model).map(({ name, row, sense, side }) => ({
      name,
      vars: rowTerms(model, row).map(({ column, value }) => ({
        name: columnName(column),
        coef: value,
      })),
      bnds: bound(glpk, sense === 'L' ? -Infinity : side, sense === 'G' ? Infinity : side),
    })),
    bounds: model.variables.map(({ column }) => ({
      name: columnName(column),
      ...bound(glpk, model.lower[column] ?? 0, model.upper[column] ?? 0),
    })),
    generals: model.variables
      .filter(({ column }) => model.kinds[column] !== 'continuous')
      .map(({ column }) => columnName(column)),
  };
}

function bound(glpk: GLPK, lower: number, upper: number) {
  const [lb, ub] = [Number.isFinite(lower) ? lower : 0, Number.isFinite(upper) ? upper : 0];
  return { type: boundType(glpk, lower, upper), lb, ub };
}

function boundType(glpk: GLPK, lower: number, upper: number): number {
  if (lower === upper) return glpk.GLP_FX;
  if (lower === -Infinity) return upper === Infinity ? glpk.GLP_FR : glpk.GLP_UP;
  return upper === Infinity ? glpk.GLP_LO : glpk.GLP_DB;
}
