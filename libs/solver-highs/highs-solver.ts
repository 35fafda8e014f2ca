import loadHighs, {
  type Highs,
  type HighsCallbackMap,
  type Model as HighsModel,
  type UserSolutionCallbackEvent,
} from 'highs';
import type { Model } from '#mip/model.js';
import { largestViolation, objectiveValue } from '#mip/model.js';
import { OpenHighs } from './open-highs.js';
import { attempt } from './attempt.js';
import { toHighs } from './to-highs.js';
import type { SolveOptions, SolveOutcome, Solver, StopReason } from '#mip/solver.js';

const FEASIBILITY = 1e-6;

/** Loads the HiGHS solver. One instance serves one thread; its calls block that thread. */
export async function loadHighsSolver(): Promise<Solver> {
  const highs = await loadHighs();
  return {
    name: 'HiGHS',
    version: highs.version.string,
    solve: (model, options) => solveWith(highs, model, options),
    open: (model, options) => new OpenHighs(highs, model, options),
  };
}

function solveWith(highs: Highs, model: Model, options: SolveOptions): SolveOutcome {
  return highs.withModel(toHighs(highs, model, options.relaxed ? 'relaxed' : 'whole'), (native) => {
    native.options.set(highsOptions(options));
    if (options.start) {
      native.setSolution({ indices: options.start.columns, values: options.start.values });
    }
    let interrupted = false;
    const run = (change: Record<string, string>) => {
      native.options.set(change);
      native.run(callbacks(highs, options, () => (interrupted = true)));
      return native.getModelStatus();
    };
    const { unboundedOrInfeasible, unknown } = highs.constants.modelStatus;
    const status = attempt(() => run({}));
    if (status === unboundedOrInfeasible) run({ presolve: 'off' });
    // A badly scaled model now and then ends undecided, or in an error, where presolve was off or fails.
    const again = status === undefined || (status === unknown && options.relaxed && !interrupted);
    if (again && attempt(() => run({ presolve: 'on' })) === undefined) return UNDECIDED;
    return readOutcome({ highs, native, model, interrupted, options });
  });
}

const UNDECIDED: SolveOutcome = { kind: 'stopped-without-point', reason: 'work', bound: NaN };

function highsOptions({
  limits,
  seed,
  relaxed,
}: SolveOptions): Record<string, string | number | boolean> {
  return {
    output_flag: false,
    random_seed: seed,
    mip_feasibility_tolerance: FEASIBILITY,
    // Time may run out between asking what is left and starting the solve.
    ...(limits.seconds === undefined ? {} : { time_limit: Math.max(0, limits.seconds) }),
    ...(limits.nodes === undefined ? {} : { mip_max_nodes: limits.nodes }),
    ...(limits.iterations === undefined ? {} : { simplex_iteration_limit: limits.iterations }),
    ...(relaxed ? { solver: 'simplex', presolve: 'off' } : {}),
    mip_rel_gap: limits.relativeGap ?? 0,
    mip_abs_gap: limits.absoluteGap ?? 1e-9,
  };
}

function callbacks(
  highs: Highs,
  { hooks }: SolveOptions,
  onInterrupt: () => void,
): HighsCallbackMap | undefined {
  const { mipImprovingSolution, mipInterrupt, mipUserSolution, simplexInterrupt } =
    highs.constants.callbackType;
  if (!hooks) return undefined;
  const { newPoint } = hooks;
  const stopIfAsked = (event: { interrupt(): void }) => {
    if (!hooks.shouldStop?.()) return;
    onInterrupt();
    event.interrupt();
  };
  return {
    [mipImprovingSolution](event) {
      const { mip_solution: values, objective_function_value: objective } = event.data;
      if (values && objective !== undefined) hooks.onPoint?.(values, objective);
    },
    [mipInterrupt](event) {
      if (event.data.mip_dual_bound !== undefined) hooks.onBound?.(event.data.mip_dual_bound);
      stopIfAsked(event);
    },
    [simplexInterrupt](event) {
      stopIfAsked(event);
    },
    ...(newPoint && {
      [mipUserSolution](event: UserSolutionCallbackEvent) {
        const point = newPoint();
        if (!point) return;
        event.setSolution({ indices: point.columns, values: point.values });
        event.repairSolution();
      },
    }),
  };
}

interface Ran {
  readonly highs: Highs;
  readonly native: HighsModel;
  readonly model: Model;
  readonly interrupted: boolean;
  readonly options: SolveOptions;
}

function readOutcome(ran: Ran): SolveOutcome {
  const status = ran.native.getModelStatus();
  const known = ran.highs.constants.modelStatus;
  switch (status) {
    case known.optimal:
    case known.empty:
      return optimalOutcome(ran);
    case known.infeasible:
      return { kind: 'infeasible' };
    case known.timeLimit:
      return stoppedOutcome(ran, 'time');
    case known.iterationLimit:
    case known.solutionLimit:
      return stoppedOutcome(ran, 'work');
    case known.interrupted:
      return stoppedOutcome(ran, ran.interrupted ? 'interrupted' : 'work');
    case known.unknown:
      return stoppedOutcome(ran, ran.interrupted ? 'interrupted' : 'work');
    default:
      throw unhandled(status);
  }
}

function unhandled(status: number): Error {
  return new Error(`the solver ended in a state that is not handled: ${status}`);
}
function optimalOutcome(ran: Ran): SolveOutcome {
  const { colValue: values, rowDual, colDual } = ran.native.getSolution();
  const objective = objectiveValue(ran.model, values);
  return {
    kind: 'optimal',
    values,
    objective,
    bound: dualBound(ran, objective),
    ...(ran.options.relaxed ? { duals: { rows: rowDual, columns: colDual } } : {}),
  };
}

function stoppedOutcome(ran: Ran, reason: StopReason): SolveOutcome {
  const worst = ran.model.sense === 'maximize' ? Infinity : -Infinity;
  const bound = ran.options.relaxed ? worst : dualBound(ran, worst);
  const values = ran.native.getSolution().colValue;
  const found = values.length === ran.model.variables.length && !ran.options.relaxed;
  if (!found || largestViolation(ran.model, values) > FEASIBILITY * 100) {
    return { kind: 'stopped-without-point', reason, bound };
  }
  return { kind: 'stopped', reason, values, objective: objectiveValue(ran.model, values), bound };
}

function dualBound(ran: Ran, otherwise: number): number {
  const integer = ran.model.kinds.some((k) => k !== 'continuous') && !ran.options.relaxed;
  if (!integer) return otherwise;
  const bound = Number(ran.native.info.get('mip_dual_bound'));
  return Number.isFinite(bound) && Math.abs(bound) < 1e30 ? bound : otherwise;
}
