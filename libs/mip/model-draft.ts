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
  /** By variable: where its value of the row at hand stands, if it has one. */
  private readonly placeOf: number[] = [];
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
    const start = this.columns.length;
    for (const { variable, coefficient } of spec.terms) {
      if (!Number.isFinite(coefficient)) {
        throw new RangeError(
          `row ${spec.label}: coefficient of ${variable.label} is ${coefficient}`,
        );
      }
      this.addValue(start, variable.column, coefficient);
    }
    this.dropZeros(start);
    this.rowLabels.push(spec.label);
    this.rowLower.push(spec.atLeast ?? -Infinity);
    this.rowUpper.push(spec.atMost ?? Infinity);
    this.starts.push(this.columns.length);
  }

  private addValue(start: number, column: number, value: number): void {
    const place = this.placeOf[column] ?? -1;
    if (place >= start && this.columns[place] === column) {
      this.values[place] = (this.values[place] ?? 0) + value;
      return;
    }
    this.placeOf[column] = this.columns.length;
    this.columns.push(column);
    this.values.push(value);
  }

  private dropZeros(start: number): void {
    let end = start;
    for (let i = start; i < this.values.length; i++) {
      const value = this.values[i] ?? 0;
      if (value === 0) continue;
      this.columns[end] = this.columns[i] ?? 0;
      this.values[end] = value;
      end += 1;
    }
    this.columns.length = end;
    this.values.length = end;
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
