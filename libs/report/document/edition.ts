import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { dayInWords } from '#units/dates-in-words.js';
import type { Block, PlanDocument } from './plan-document.js';

/** What marks one printing of a document, beside what it says. */
export interface Edition {
  /** Short digest of the plan, printed on every page. */
  readonly planVersion: string;
  /** ISO 8601 date, or date and time in UTC. */
  readonly createdAt: string;
  /** Left out: US Letter. */
  readonly paper?: PlanDocument['paper'];
  /** Who approved it. Left out: a draft. */
  readonly approvedBy?: string;
}

/** What one document says, apart from what all documents of a plan carry. */
export interface DocumentParts {
  readonly title: string;
  readonly subject: string;
  readonly blocks: readonly Block[];
}

/** A document of a plan: its parts, with the marks that every page of it carries. */
export function planDocument(
  { campus, solve }: Pick<PlanOverview, 'campus' | 'solve'>,
  edition: Edition,
  parts: DocumentParts,
): PlanDocument {
  const { planVersion, createdAt, paper = 'letter', approvedBy } = edition;
  return {
    ...parts,
    language: 'en-US',
    program: campus.program,
    planVersion,
    dataDate: dayInWords(campus.dataDate),
    ...(approvedBy === undefined ? { status: 'draft' } : { status: 'approved', approvedBy }),
    solveNote: solve.sentence,
    paper,
    createdAt,
  };
}
