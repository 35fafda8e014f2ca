/** A column of a model. The label is for people and for exports; no code reads meaning from it. */
export interface Variable {
  readonly column: number;
  readonly label: string;
}

export type VariableKind = 'binary' | 'integer' | 'continuous';

/** One term of a row or of an objective. */
export interface Term {
  readonly variable: Variable;
  readonly coefficient: number;
}

/** Rows by row, compressed: the terms of row r lie at `starts[r]` to `starts[r + 1]` (excluded). */
export interface RowMatrix {
  readonly starts: Int32Array;
  readonly columns: Int32Array;
  readonly values: Float64Array;
}

export type Sense = 'maximize' | 'minimize';

/** A mixed-integer linear model: rows between bounds, columns between bounds, one objective. */
export interface Model {
  readonly variables: readonly Variable[];
  readonly kinds: readonly VariableKind[];
  /** Bounds of the columns; infinities allowed. */
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  readonly rowLabels: readonly string[];
  readonly rowLower: Float64Array;
  readonly rowUpper: Float64Array;
  readonly rows: RowMatrix;
  readonly sense: Sense;
  readonly objective: Float64Array;
}

/** Value of the objective at a point with one entry for each column. */
export function objectiveValue(model: Model, values: ArrayLike<number>): number {
  return model.objective.reduce((sum, c, j) => (c === 0 ? sum : sum + c * (values[j] ?? 0)), 0);
}

/** Largest violation of any row or column bound at a point, 0 where it is feasible. */
export function largestViolation(model: Model, values: ArrayLike<number>): number {
  let worst = 0;
  for (let j = 0; j < model.variables.length; j++) {
    const value = values[j] ?? 0;
    worst = Math.max(worst, (model.lower[j] ?? 0) - value, value - (model.upper[j] ?? 0));
  }
  for (let r = 0; r < model.rowLabels.length; r++) {
    const activity = rowActivity(model, r, values);
    worst = Math.max(
      worst,
      (model.rowLower[r] ?? 0) - activity,
      activity - (model.rowUpper[r] ?? 0),
    );
  }
  return worst;
}

export function rowActivity(model: Model, row: number, values: ArrayLike<number>): number {
  const { starts, columns, values: coefficients } = model.rows;
  let activity = 0;
  for (let k = starts[row] ?? 0; k < (starts[row + 1] ?? 0); k++) {
    activity += (coefficients[k] ?? 0) * (values[columns[k] ?? 0] ?? 0);
  }
  return activity;
}
