import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { dayInWords } from '#units/dates-in-words.js';
import type { Block, PlanDocument } from '../document/plan-document.js';
import { heading, pageBreak } from '../document/text-blocks.js';
import { aboutBlocks } from './about.js';
import { askBlocks } from './asks.js';
import { decisionBlocks } from './decision.js';
import { limitBlocks } from './limits.js';
import { nextSiteBlocks } from './next-site.js';
import { optionBlocks } from './options.js';
import { promiseBlocks } from './promises.js';
import { timelineBlocks } from './timeline.js';
import { unknownBlocks } from './unknowns.js';

export interface BriefContext {
  /** Short digest of the plan, printed on every page. */
  readonly planVersion: string;
  /** ISO 8601 date, or date and time in UTC. */
  readonly createdAt: string;
}

/**
 * The brief for those who decide on money and positions: the decision sought, the next site with what
 * speaks for and against it, the timeline, the care that follows, and what is not known. It says what
 * the overview says and works out nothing of its own.
 */
export function administrationBrief(overview: PlanOverview, context: BriefContext): PlanDocument {
  const { campus, firstYear, lastYear, solve } = overview;
  return {
    title: 'Administration brief',
    subject: `${campus.name}: landscape plan, ${firstYear} to ${lastYear}`,
    language: 'en-US',
    program: campus.program,
    planVersion: context.planVersion,
    dataDate: dayInWords(campus.dataDate),
    status: 'draft',
    solveNote: solve.sentence,
    paper: 'letter',
    createdAt: context.createdAt,
    blocks: blocksOf(overview),
  };
}

function blocksOf(overview: PlanOverview): readonly Block[] {
  return [
    ...decisionBlocks(overview),
    ...nextSiteBlocks(overview),
    heading(1, 'What runs short, what it takes, what is open'),
    ...limitBlocks(overview),
    ...promiseBlocks(overview),
    ...askBlocks(overview),
    ...optionBlocks(overview),
    ...aboutBlocks(),
    pageBreak(),
    ...timelineBlocks(overview),
    ...unknownBlocks(overview),
  ];
}
