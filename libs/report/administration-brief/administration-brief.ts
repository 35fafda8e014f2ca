import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { planDocument, type Edition } from '../document/edition.js';
import type { Block, PlanDocument } from '../document/plan-document.js';
import { heading, pageBreak } from '../document/text-blocks.js';
import { aboutBlocks } from '../parts/about.js';
import { askBlocks } from '../parts/asks.js';
import { decisionBlocks } from './decision.js';
import { limitBlocks } from '../parts/limits.js';
import type { PlanAnswers } from '../parts/plan-answers.js';
import { nextSiteBlocks } from './next-site.js';
import { optionBlocks } from '../parts/options.js';
import { promiseBlocks } from './promises.js';
import { sourceBlocks } from '../parts/sources.js';
import { timelineBlocks } from '../parts/timeline.js';
import { questionBlocks } from './questions.js';
import { unknownBlocks } from './unknowns.js';

/**
 * The brief for those who decide on money and positions: the decision sought, the next site with what
 * speaks for and against it, the timeline, the care that follows, what is not known, and what was asked. It says what
 * the overview says and works out nothing of its own.
 */
export function administrationBrief(
  overview: PlanOverview,
  edition: Edition,
  answers: PlanAnswers = {},
): PlanDocument {
  const { campus, firstYear, lastYear } = overview;
  return planDocument(overview, edition, {
    title: 'Administration brief',
    subject: `${campus.name}: landscape plan, ${firstYear} to ${lastYear}`,
    blocks: [...blocksOf(overview), ...questionBlocks(answers, campus.dataDate)],
  });
}

/** The table of sources fills the second page where the first is full of one site; else it stands last. */
function blocksOf(overview: PlanOverview): readonly Block[] {
  const sources = sourceBlocks(overview);
  const isOneSite = overview.next.sites.length === 1;
  return [
    ...decisionBlocks(overview),
    ...nextSiteBlocks(overview),
    heading(1, 'What runs short, what it takes, what is open'),
    ...limitBlocks(overview),
    ...promiseBlocks(overview),
    ...askBlocks(overview),
    ...optionBlocks(overview),
    ...(isOneSite ? sources : aboutBlocks()),
    pageBreak(),
    ...timelineBlocks(overview),
    ...unknownBlocks(overview),
    ...(isOneSite ? aboutBlocks() : sources),
  ];
}
