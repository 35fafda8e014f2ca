import type { EstimateAnswer, SiteEstimates } from '#planning/site-estimate.js';
import { ProblemError } from '../problems/problem-error.js';

/** The estimates, or the problem that kept them from being made. */
export function estimatesOrProblem(answer: EstimateAnswer): SiteEstimates {
  if (answer.kind === 'estimated') return answer.estimates;
  const { problem } = answer;
  throw new ProblemError(answer.kind, `${problem.problem} ${problem.remedy}`, {
    problems: [problem],
  });
}
