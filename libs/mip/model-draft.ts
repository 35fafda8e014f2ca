import type { Model, Sense, Term, Variable, VariableKind } from './model.js';

export interface VariableSpec {
  readonly label: string;
  readonly kind: VariableKind;
  /** Left out: 0. */
  readonly lower?: number;
  /** Left out: 1 for a binary, else unbounded. */
  readonly upper?: number;
}

export interface RowSpec {
  readonly label: string;
  readonly terms: readonly Term[];
  /** Left out: unbounded on that side. At least one is given. */
  readonly atLeast?: number;
  readonly atMost?: number;
}

/** A model while it is being written. Variables and rows keep the order in which they are added. */
export class ModelDraft {
  private readonly variables: Variable[] = [];
  private readonly kinds: VariableKind[] = [];
  private readonly lower: number[] = [];
  private readonly upper: number[] = [];
  private readonly rowLabels: string[] = [];
  private readonly rowLower: number[] = [];
  private readonly rowUpper: number[] = [];
  private readonly starts: number[] = [0];
  private readonly columns: number[] = [];
  private readonly values: number[] = [];

  addVariable(spec: VariableSpec): Variable {
    const variable = { column: this.variables.length, label: spec.label };
    this.variables.push(variable);
    this.kinds.push(spec.kind);
    this.lower.push(spec.lower ?? 0);
    this.upper.push(spec.upper ?? (spec.kind === 'binary' ? 1 : Infinity));
    return variable;
  }

  upperOf(variable: Variable): number {
    return this.upper[variable.column] ?? Infinity;
  }

  /** Adds a row; terms of one variable are summed, zero terms are left out. */
  addRow(spec: RowSpec): void {
    const byColumn = new Map<number, number>();
    for (const { variable, coefficient } of spec.terms) {
      if (!Number.isFinite(coefficient)) {
        throw new RangeError(
          `row ${spec.label}: coefficient of ${variable.label} is ${coefficient}`,
        );
      }
      byColumn.set(variable.column, (byColumn.get(variable.column) ?? 0) + coefficient);
    }
    for (const [column, value] of byColumn) {
      if (value === 0) continue;
      this.columns.push(column);
      this.values.push(value);
    }
    this.rowLabels.push(spec.label);
    this.rowLower.push(spec.atLeast ?? -Infinity);
    this.rowUpper.push(spec.atMost ?? Infinity);
    this.starts.push(this.columns.length);
  }

  /** Makes the model with an objective; the draft may be built again with another. */
  build(sense: Sense, objective: readonly Term[]): Model {
    const costs = new Float64Array(this.variables.length);
    for (const { variable, coefficient } of objective) {
      costs[variable.column] = (costs[variable.column] ?? 0) + coefficient;
    }
    return {
      variables: [...this.variables],
      kinds: [...this.kinds],
      lower: Float64Array.from(this.lower),
      upper: Float64Array.from(this.upper),
      rowLabels: [...this.rowLabels],
      rowLower: Float64Array.from(this.rowLower),
      rowUpper: Float64Array.from(this.rowUpper),
      rows: {
        starts: Int32Array.from(this.starts),
        columns: Int32Array.from(this.columns),
        values: Float64Array.from(this.values),
      },
      sense,
      objective: costs,
    };
  }
}
