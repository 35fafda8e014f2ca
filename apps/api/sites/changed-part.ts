import type { PartOutcome } from '#planning/use-cases/change-part.js';
import { campusSummaryReplyOf } from '../campuses/campus-replies.js';
import { countOf, unknownCampus } from '../campuses/saved-campus.js';
import { ProblemError } from '../problems/problem-error.js';

/** The reply to a saved part of a campus, or the problem that kept it from being saved. */
export function savedPartOrProblem(outcome: PartOutcome) {
  switch (outcome.kind) {
    case 'saved': {
      const { campus, warnings, before } = outcome;
      return { campus: campusSummaryReplyOf(campus), warnings, before };
    }
    case 'refused':
      throw new ProblemError('campus-refused', countOf(outcome.problems), {
        problems: outcome.problems,
      });
    case 'unknown-campus':
      throw unknownCampus();
    case 'edit-conflict': {
      const { version, base, current } = outcome;
      const detail = 'Compare both versions, and save what should stand.';
      throw new ProblemError('edit-conflict', detail, {
        currentVersion: version,
        versions: { base, current },
      });
    }
  }
}
