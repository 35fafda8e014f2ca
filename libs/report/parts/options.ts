import type { Alternative, PlanOverview } from '#explain/overview/plan-overview.js';
import { counted, dollarsInWords, hoursInWords, squareFeetInWords } from '#units/in-words.js';
import type { Block } from '../document/plan-document.js';
import { row, table, textColumn, type Row } from '../document/table.js';

/** The plan and the ways to do less, side by side and of one size. */
export function optionBlocks({ alternatives }: PlanOverview): readonly Block[] {
  const [first] = alternatives;
  if (!first || alternatives.length < 2) return [];
  const line = (name: string, of: (one: Alternative) => string): Row =>
    row(name, ...alternatives.map(of));
  return [
    table({
      caption: 'Options, doing less among them',
      note: 'Doing less is a legitimate decision. Each option is a part of this plan and not solved anew: a better one may exist. Capital: AACE class 5, for planning.',
      density: 'dense',
      columns: [
        textColumn('Option', 1.4),
        ...alternatives.map(({ title }, index) =>
          textColumn(`${'ABCD'.charAt(index)}. ${title}`, 3),
        ),
      ],
      rows: [
        line(
          'Builds',
          (one) => `${counted(one.sitesBuilt, 'site')}, ${squareFeetInWords(one.areaBuiltSqFt)}`,
        ),
        line(
          'Capital; hires',
          (one) => `${dollarsInWords(one.capitalDollars)}; ${dollarsInWords(one.positionDollars)}`,
        ),
        line(
          `Last ${first.busySeason}`,
          ({ busySeasonHours }) => `${hoursInWords(busySeasonHours)} of care`,
        ),
        line('Gives up', ({ givenUp }) => givenUp.join('; ') || 'Nothing that is promised'),
      ],
    }),
  ];
}
