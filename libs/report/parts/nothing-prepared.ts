import type { PlanOverview } from '#explain/overview/plan-overview.js';
import type { Block } from '../document/plan-document.js';
import { leadParagraph, paragraph } from '../document/text-blocks.js';

/** What a document about the first year's work says where there is none. */
export function nothingPrepared({
  firstYear,
  lastYear,
}: Pick<PlanOverview, 'firstYear' | 'lastYear'>): readonly Block[] {
  return [
    leadParagraph(`This plan prepares no site from ${firstYear} to ${lastYear}.`),
    paragraph('The care of what is there goes on as agreed with grounds.'),
  ];
}
