import type { Model } from './model.js';

/** Why a solve stopped before it was proven. */
export type StopReason = 'time' | 'work' | 'interrupted';

/** Every way a solve can end. A caller handles each one by name. */
export type SolveOutcome =
  | {
      readonly kind: 'optimal';
      readonly values: Float64Array;
      readonly objective: number;
      readonly bound: number;
      /** Of a relaxation. */
      readonly duals?: Duals;
    }
  | {
      readonly kind: 'stopped';
      readonly reason: StopReason;
      readonly values: Float64Array;
      readonly objective: number;
      readonly bound: number;
    }
  | { readonly kind: 'stopped-without-point'; readonly reason: StopReason; readonly bound: number }
  | { readonly kind: 'infeasible' };

/**
 * Dual values of a relaxation at its optimum: what the objective gains for each unit by which a row's
 * binding limit grows, or by which a column is pushed away from its bound (its reduced cost).
 */
export interface Duals {
  readonly rows: Float64Array;
  readonly columns: Float64Array;
}

export interface SolveLimits {
  /** Wall-clock seconds. Left out: none. */
  readonly seconds?: number;
  /** Branch-and-bound nodes; with a seed and no time limit the same limit gives the same answer. */
  readonly nodes?: number;
  /** Simplex iterations of a relaxation; left out: none. */
  readonly iterations?: number;
  /** Relative gap at which to stop, as a share. Left out: 0. */
  readonly relativeGap?: number;
  /** Absolute gap at which to stop, in objective units. Left out: 0. */
  readonly absoluteGap?: number;
}

export interface SolveOptions {
  readonly limits: SolveLimits;
  readonly seed: number;
  /** Values of the whole-number columns of a feasible point; the solver works out the others. */
  readonly start?: PartialPoint;
  /** Ignore integrality. */
  readonly relaxed?: true;
  readonly hooks?: SolveHooks;
}

/** Values of some columns, in one order. */
export interface PartialPoint {
  readonly columns: readonly number[];
  readonly values: readonly number[];
}

/** Called while a solve runs, in its thread. */
export interface SolveHooks {
  readonly onPoint?: (values: Float64Array, objective: number) => void;
  readonly onBound?: (bound: number) => void;
  readonly shouldStop?: () => boolean;
  /** Asked now and then for a point that was found elsewhere, to be taken up where it is better. */
  readonly newPoint?: () => PartialPoint | undefined;
}

/** Solves models. The call blocks its thread, so it belongs in a worker. */
/** How one solve of an open relaxation ended. Undecided: out of time, or given up by the solver. */
export type OpenOutcome =
  | {
      readonly kind: 'optimal';
      readonly objective: number;
      readonly values: Float64Array;
      /** Reduced costs, one for each column. */
      readonly columnDuals: Float64Array;
    }
  | { readonly kind: 'infeasible' }
  | { readonly kind: 'undecided' };

export interface OpenOptions {
  readonly seed: number;
  /** What changes between two solves: it decides how the solver goes on from the last one. */
  readonly changing: 'bounds' | 'objective';
  readonly shouldStop: () => boolean;
}

/** A relaxation that is solved again and again, a little changed: each solve goes on from the last. */
export interface OpenRelaxation {
  setColumn(column: number, lower: number, upper: number): void;
  /** One coefficient for each column; the sense stays as it is. */
  setObjective(costs: Float64Array): void;
  /** @param seconds after which it is given up */
  solve(seconds: number): OpenOutcome;
  /** Must be called; nothing else may be called after it. */
  close(): void;
}

export interface Solver {
  readonly name: string;
  readonly version: string;
  solve(model: Model, options: SolveOptions): SolveOutcome;
  /** Opens the relaxation of a model: whole-number columns may take fractions. */
  open(model: Model, options: OpenOptions): OpenRelaxation;
}
