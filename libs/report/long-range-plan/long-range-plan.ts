import type { Campus } from '#domain/campus.js';
import type { CampusPlaces } from '#explain/documents/long-range/campus-places.js';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import type { FuturesAnswer } from '#futures/results/answer.js';
import { counted, dollarsInWords, squareFeetInWords } from '#units/in-words.js';
import { planDocument, type Edition } from '../document/edition.js';
import { bold } from '../document/inline.js';
import { fact, keyFacts } from '../document/key-facts.js';
import type { Block, PlanDocument } from '../document/plan-document.js';
import { heading, leadParagraph, list, pageBreak, smallPrint } from '../document/text-blocks.js';
import { aboutBlocks } from '../parts/about.js';
import { askBlocks } from '../parts/asks.js';
import { cautionBox } from '../parts/caution-box.js';
import { commitmentTable } from '../parts/commitments.js';
import { limitBlocks } from '../parts/limits.js';
import { optionBlocks } from '../parts/options.js';
import { busySeasonRows } from '../parts/season.js';
import { timelineBlocks } from '../parts/timeline.js';
import { ESTIMATE_CLASS } from '../parts/words.js';
import { appendixBlocks } from './appendix.js';
import { assumptionBlocks } from './assumptions.js';
import { mapFigure } from './map.js';
import { uncertaintyBlocks } from './uncertainty.js';

export interface LongRangeSource {
  readonly overview: PlanOverview;
  readonly campus: Campus;
  readonly places: CampusPlaces;
  /** How it fares in sampled futures. Left out: not asked. */
  readonly futures?: FuturesAnswer;
}

/** All of a plan for the committee that keeps it: years, map, promises, doubts, and what it rests on. */
export function longRangePlan(source: LongRangeSource, edition: Edition): PlanDocument {
  const { overview, campus, places } = source;
  const { firstYear, lastYear } = overview;
  const season = busySeasonRows(overview)[0]?.season ?? 'main season';
  return planDocument(overview, edition, {
    title: 'Long-range plan',
    subject: `${overview.campus.name}: every site from ${firstYear} to ${lastYear}, and what it rests on`,
    blocks: [
      ...summaryBlocks(overview),
      ...timelineBlocks(overview),
      pageBreak(),
      heading(1, 'Every site'),
      mapFigure(places, season),
      smallPrint(ESTIMATE_CLASS),
      ...cautionBox('wherever sites are built', overview.cautions),
      heading(1, 'What was promised'),
      commitmentTable(overview, campus.commitments),
      ...uncertaintyBlocks(overview, places, source.futures),
      ...assumptionBlocks(campus),
      ...aboutBlocks(),
      ...appendixBlocks(overview),
    ],
  });
}

function summaryBlocks(overview: PlanOverview): readonly Block[] {
  const { headline, totals } = overview;
  return [
    leadParagraph(headline.nextSite),
    list('bullet', [
      [bold('First limit. '), { text: headline.firstLimit }],
      [bold('Promise. '), { text: headline.promise }],
    ]),
    keyFacts(
      [
        fact('Sites', `${totals.sitesBuilt} of ${counted(totals.candidates, 'candidate')}`),
        fact('Area', squareFeetInWords(totals.areaBuiltSqFt)),
        fact('Capital', `${dollarsInWords(totals.capitalNominalDollars)} in dollars of each year`),
        fact('Years', `${overview.firstYear} to ${overview.lastYear}`),
      ],
      2,
    ),
    heading(1, 'What runs short, what to ask, what else could be done'),
    ...limitBlocks(overview),
    ...askBlocks(overview),
    ...optionBlocks(overview),
  ];
}
