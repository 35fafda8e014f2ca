import type { Plan } from '#domain/plan.js';
import type { SolveProgress, ThreadHooks } from '#solving/solve-in-thread.js';
import type { Output } from './output.js';

/** Seconds between two lines while nothing new is found. */
const QUIET_SECONDS = 5;

/** Prints what a solve tells, one line for each better plan and otherwise now and then. */
export function progressPrinter(
  candidates: number,
  output: Output,
): Required<Pick<ThreadHooks, 'onProgress' | 'onPlan'>> {
  const began = performance.now();
  const elapsed = () => (performance.now() - began) / 1000;
  let printedAt = -QUIET_SECONDS;
  let sites = 0;
  const print = (text: string) => {
    printedAt = elapsed();
    output.note(`${printedAt.toFixed(1).padStart(7)} s  ${text}`);
  };
  return {
    onPlan: (plan: Plan) => {
      sites = plan.decisions.placements.length;
      print(`better plan: ${sites} of ${candidates} sites`);
    },
    onProgress: (p: SolveProgress) => {
      if (elapsed() - printedAt < QUIET_SECONDS) return;
      print(`${p.tier}: ${numbers(p)}`);
    },
  };
}

function numbers({ objective, bound, gap }: SolveProgress): string {
  const best = objective === null ? 'no plan yet' : `best ${objective.toFixed(1)}`;
  const limit = bound === null ? '' : `, bound ${bound.toFixed(1)}`;
  return `${best}${limit}${gap === null ? '' : `, gap ${(gap * 100).toFixed(1)} %`}`;
}
