import type { LimitsAnswer, PromiseLimit } from '#explain/questions/limits/answer.js';
import { madeLines } from './made-lines.js';

type PlanLimit = LimitsAnswer['annual'];

/** What breaks first: of the promise, then of this plan. */
export function limitsLines(answer: LimitsAnswer): string[] {
  const { headline, promise, ofPlan, annual, ofPromise, together, made } = answer;
  return [
    headline,
    '',
    `How far “${promise}” can be kept, each resource limited alone:`,
    ...ofPromise.map(promiseLine),
    'All limits together:',
    ...together.map(promiseLine),
    '',
    'What runs short first in this plan, without positions only proposed and money only pledged:',
    ...ofPlan.map(planLine),
    'For comparison, hours added up over the year:',
    planLine(annual),
    '',
    ...madeLines(made),
  ];
}

function promiseLine({ sentence }: PromiseLimit): string {
  return `  ${sentence}`;
}

function planLine({ resource, label, sentence }: PlanLimit): string {
  return `  ${resource}: ${label === null ? '' : `${label}. `}${sentence}`;
}
