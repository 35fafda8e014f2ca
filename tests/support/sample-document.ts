import { caution, callout, options, signatures } from '#report/document/boxes.js';
import { bold, italic } from '#report/document/inline.js';
import { fact, keyFacts } from '#report/document/key-facts.js';
import type { Block, PlanDocument } from '#report/document/plan-document.js';
import { numberColumn, row, table, textColumn, totalRow } from '#report/document/table.js';
import {
  heading,
  leadParagraph,
  list,
  paragraph,
  smallPrint,
} from '#report/document/text-blocks.js';

/** A document of the given blocks with everything else filled in. */
export function documentOf(
  blocks: readonly Block[],
  change: Partial<PlanDocument> = {},
): PlanDocument {
  return {
    title: 'Administration brief',
    subject: 'Which site next year, and the care it brings',
    language: 'en-US',
    program: 'Tamarack Vale University landscape program',
    planVersion: 'sample-3',
    dataDate: '2026-02-14',
    status: 'draft',
    solveNote: 'Sample text, not a solved plan. No better plan was found; the gap is unknown.',
    paper: 'letter',
    createdAt: '2026-02-14T09:30:00Z',
    blocks,
    ...change,
  };
}

/** One of each block but figures, with sample numbers. */
export const sampleBlocks: readonly Block[] = [
  leadParagraph(
    'Two summers from now the sites already built need more care than the crew can give.',
  ),
  callout('decision', 'Decision sought', [
    'Fund one position from July 2028, or skip the build of fiscal year 2029.',
  ]),
  heading(1, 'Next site'),
  paragraph(
    'The plan takes ',
    bold('East Hall Court'),
    ' first, since ',
    italic('its gift'),
    ' expires.',
  ),
  keyFacts(
    [
      fact('Area', '11,000 sf'),
      fact('Build type', 'Edible mixed'),
      fact('Soil lead', 'unknown; edible types stay blocked until a laboratory reports'),
      fact('Gift', '$38,000, to be spent by June 30, 2029'),
    ],
    2,
  ),
  list('number', [
    'Ask for the position in November.',
    'Order compost by June.',
    'Sheet mulch in October.',
  ]),
  heading(2, 'Costs'),
  table({
    caption: 'Capital by site, dollars of the year of spending',
    columns: [
      textColumn('Site'),
      numberColumn('Low'),
      numberColumn('Planned'),
      numberColumn('High'),
    ],
    rows: [
      row('East Hall Court', '61,600', '88,000', '132,000'),
      row('Library Slope', '58,100', '83,000', '124,500'),
      totalRow('Both', '119,700', '171,000', '256,500'),
    ],
    note: 'Estimate class 5, about -30 % to +50 %. Not for contract award.',
  }),
  caution('before anyone digs', [
    'Call the public one-call center and the campus locator, wait, and dig by hand near marks.',
    'Local codes and the institution\u2019s own staff decide.',
  ]),
  heading(2, 'Alternatives'),
  options([
    {
      title: 'A. Keep the promise',
      summary: 'One site each year, one gardener more from 2028.',
      facts: [fact('Cost to 2036', '$640,000'), fact('First limit', 'Summer 2037')],
      points: ['Ask in November 2027.'],
    },
    {
      title: 'B. Skip two years',
      summary: 'No site in 2029 and 2031; the crew stays as it is and nobody is asked for money.',
      facts: [fact('Cost to 2036', '$210,000'), fact('First limit', 'Summer 2034')],
      points: ['Tell the reunion committee.', 'The gift of 2029 moves to 2030.'],
    },
    {
      title: 'C. Do less',
      summary: 'Two sites become meadow.',
      facts: [fact('Cost to 2036', '$95,000'), fact('First limit', 'none before 2046')],
      points: [],
    },
  ]),
  heading(3, 'Sources'),
  smallPrint('Care hours: planning coefficients, judgement, to be calibrated in year one.'),
  signatures('Seen and agreed as a plan, not as a promise of funds.', [
    'Grounds superintendent',
    'Program manager',
  ]),
];
