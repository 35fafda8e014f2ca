import type { Problem } from '#domain/problem.js';
import { buildTypeProblems } from './build-types.js';
import { calendarProblems } from './calendar.js';
import { commitmentProblems } from './commitments.js';
import { compostProblems } from './compost.js';
import { constructionProblems } from './conflicts.js';
import { duplicateIdProblems } from './duplicate-ids.js';
import { evidenceProblems } from './evidence.js';
import type { FileView } from './file-view.js';
import { fundProblems } from './funds.js';
import { giftProblems } from './gifts.js';
import { handPlacementProblems } from './hand-placements.js';
import { laborProblems } from './labor.js';
import { siteOrderProblems } from './order-of-sites.js';
import { publishedProblems } from './lives.js';
import { rangeProblems } from './range-problems.js';
import { referenceProblems } from './references.js';
import { reimbursementProblems } from './reimbursements.js';
import { restrictedFundProblems } from './restricted-funds.js';
import { siteProblems } from './sites.js';
import { totalProblems } from './totals.js';
import { weatherProblems } from './weather.js';

const CHECKS: readonly ((view: FileView) => Problem[])[] = [
  calendarProblems,
  duplicateIdProblems,
  referenceProblems,
  totalProblems,
  siteProblems,
  evidenceProblems,
  rangeProblems,
  buildTypeProblems,
  laborProblems,
  fundProblems,
  restrictedFundProblems,
  reimbursementProblems,
  giftProblems,
  compostProblems,
  constructionProblems,
  siteOrderProblems,
  commitmentProblems,
  handPlacementProblems,
  publishedProblems,
  weatherProblems,
];

/** Everything that the parts of a file say wrongly together, boundaries left to the geometry checks. */
export function checkFile(view: FileView): Problem[] {
  return CHECKS.flatMap((check) => check(view));
}
