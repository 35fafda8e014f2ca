import { parsePlanFile, planOriginProblems, type PlanFile } from '#contracts/plan-file.js';
import type { ImportPlan, ImportReport } from '#contracts/http/imports.js';
import { anError, type Problem } from '#domain/problem.js';
import type { FileReading, PlanReading } from '../ports/exchange.js';
import type { PlanChecker, PlanVerdict } from '../ports/plan-checker.js';
import type { SolveLimits } from '../solve-limits.js';

/** Why a plan of a bundle is not kept: what is wrong is the bundle's, not a defect of the program. */
export function refusedPlan(name: string, { breaches }: Pick<PlanVerdict, 'breaches'>): Problem {
  const first = breaches[0]?.message ?? 'it breaks a rule';
  const more = breaches.length > 1 ? `, and ${breaches.length - 1} more` : '';
  const place = { code: 'PLAN-REFUSED', record: `plan ${name}`, field: '', value: breaches };
  return anError(place, [
    `The plan does not pass the checks of its campus: ${first.replace(/\.$/, '')}${more}.`,
    'It is not kept; the campus and its other plans are not touched by it. Solve to have a plan that holds.',
  ]);
}

/** The report once the plans that it would take were checked. */
export async function withCheckedPlans(
  report: ImportReport,
  { document, plans }: FileReading,
  checker: PlanChecker,
): Promise<ImportReport> {
  const checked: ImportPlan[] = [];
  for (const plan of report.plans) {
    const file = plans.find(({ name }) => name === plan.name)?.document;
    const isOpen = plan.outcome === 'new' && file !== undefined;
    const verdict = isOpen ? await checker.check(document, file) : undefined;
    const isRefused = verdict?.verified === false;
    checked.push(isRefused ? { ...plan, ...rejectedFor(plan.name, verdict) } : plan);
  }
  return { ...report, plans: checked };
}

function rejectedFor(name: string, verdict: PlanVerdict): Omit<ImportPlan, 'name'> {
  return { outcome: 'rejected', problems: [refusedPlan(name, verdict)] };
}

/** What would become of the plans of a bundle, as far as the bundle alone can tell. */
export function judgePlans({ document, plans }: FileReading): ImportPlan[] {
  return plans.map((plan) => {
    const problems = [...plan.problems, ...ownProblems(plan, document)];
    const outcome = problems.length > 0 ? 'rejected' : 'new';
    return { name: plan.name, outcome, problems };
  });
}

function ownProblems({ document, name }: PlanReading, campus: FileReading['document']): Problem[] {
  const file = planFileOf(document);
  if (file === undefined) return [];
  if (planOriginProblems(file, campus).length > 0) return [otherState(name)];
  return file.solver.seed > LARGEST_SEED ? [seedTooLarge(name, file.solver.seed)] : [];
}

/** Undefined: the document is no plan file. */
function planFileOf(document: unknown): PlanFile | undefined {
  const parse = parsePlanFile(document);
  return parse.ok ? parse.file : undefined;
}

/** What a request for a solve may state. */
const LARGEST_SEED = 2_147_483_647;

/** What a plan file states of its solve, as a request would have stated it. */
export function statedSolve(document: unknown): { seed: number; limits: SolveLimits } | undefined {
  const file = planFileOf(document);
  if (file === undefined) return undefined;
  const { limit, seed } = file.solver;
  const limits: SolveLimits =
    limit.kind === 'time'
      ? { seconds: limit.seconds, work: null, gap: null }
      : { seconds: null, work: limit.units, gap: null };
  return { seed, limits };
}

function otherState(name: string): Problem {
  return anError({ code: 'PLAN-OTHER-CAMPUS', record: `plan ${name}`, field: '' }, [
    'The plan was made from another state of the campus than the one in the bundle, so it cannot be checked.',
    'It is left out; solve again to have a plan.',
  ]);
}

function seedTooLarge(name: string, value: number): Problem {
  return anError({ code: 'PLAN-SEED', record: `plan ${name}`, field: 'solver.seed', value }, [
    `The plan states the seed ${value}; the largest that is kept is ${LARGEST_SEED}.`,
    'It is left out; solve again with a smaller seed.',
  ]);
}
