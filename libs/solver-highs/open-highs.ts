import type { Highs, HighsCallbackMap, Model as HighsModel } from 'highs';
import type { Model } from '#mip/model.js';
import type { OpenOptions, OpenOutcome, OpenRelaxation } from '#mip/solver.js';
import { attempt } from './attempt.js';
import { finite, toHighs } from './to-highs.js';

/** Dual simplex stays feasible where bounds change, primal simplex where the objective does. */
const STRATEGY = { bounds: 1, objective: 4 } as const;

/** A relaxation that HiGHS keeps between solves, with the basis of the last one. */
export class OpenHighs implements OpenRelaxation {
  private readonly native: HighsModel;

  constructor(
    private readonly highs: Highs,
    model: Model,
    private readonly options: OpenOptions,
  ) {
    this.native = highs.createModel(toHighs(highs, model, 'relaxed'));
    this.native.options.set({
      output_flag: false,
      random_seed: options.seed,
      solver: 'simplex',
      simplex_strategy: STRATEGY[options.changing],
      presolve: 'off',
    });
  }

  setColumn(column: number, lower: number, upper: number): void {
    const { highs } = this;
    this.native.changeColBounds(column, finite(highs, lower), finite(highs, upper));
  }

  setObjective(costs: Float64Array): void {
    this.native.changeColsCost({ kind: 'range', from: 0, to: costs.length - 1 }, costs);
  }

  solve(seconds: number): OpenOutcome {
    const { native } = this;
    const { modelStatus } = this.highs.constants;
    const status = attempt(() => {
      native.run(this.stopAfter(seconds));
      return native.getModelStatus();
    });
    if (status === modelStatus.infeasible) return { kind: 'infeasible' };
    if (status !== modelStatus.optimal) {
      // A basis that led nowhere would lead nowhere again.
      native.clearSolver();
      return { kind: 'undecided' };
    }
    const { colValue, colDual } = native.getSolution();
    const objective = Number(native.info.get('objective_function_value'));
    return { kind: 'optimal', objective, values: colValue, columnDuals: colDual };
  }

  private stopAfter(seconds: number): HighsCallbackMap {
    const until = performance.now() + 1000 * seconds;
    return {
      [this.highs.constants.callbackType.simplexInterrupt]: (event: { interrupt(): void }) => {
        if (performance.now() > until || this.options.shouldStop()) event.interrupt();
      },
    };
  }

  close(): void {
    this.native.dispose();
  }
}
