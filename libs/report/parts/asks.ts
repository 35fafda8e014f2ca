import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { dollarsInWords } from '#units/in-words.js';
import type { Block } from '../document/plan-document.js';
import { row, table, textColumn, type Row } from '../document/table.js';
import { smallPrint } from '../document/text-blocks.js';
import { hireSpans, type HireSpan } from './hire-spans.js';

/** Most lines of asks; the later ones are with the plan. */
const MOST = 4;

/** The positions that the plan needs, with the month by which to ask. */
export function askBlocks({ hires }: PlanOverview): readonly Block[] {
  if (hires.length === 0) return [smallPrint('The plan asks for no new position.')];
  const spans = hireSpans(hires);
  const later = spans.length > MOST ? 'Later ones are listed with the plan. ' : '';
  return [
    table({
      caption: 'Positions to ask for',
      density: 'dense',
      columns: [
        textColumn('Position', 2.4),
        textColumn('Ask by', 1.5),
        textColumn('First day', 4.2),
        textColumn('Cost of each', 2.6),
      ],
      rows: spans.slice(0, MOST).map(askRow),
      note: `${later}Dollars of the year in which a position starts. Asked for is not granted: the budget office decides, and labor agreements hold.`,
    }),
  ];
}

function askRow({ first, again }: HireSpan): Row {
  const cost = dollarsInWords(first.annualDollars);
  const each = first.term === 'recurring' ? 'a year' : 'a season';
  const starts = again ? `${first.startsIn}, then yearly to ${again.year}` : first.startsIn;
  const last = dollarsInWords(again?.annualDollars ?? first.annualDollars);
  const price = last === cost ? `${cost} ${each}` : `${cost} to ${last} ${each}`;
  return row(`${first.count} × ${first.position}`, first.askBy, starts, price);
}
