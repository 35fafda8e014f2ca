import type { PlanOverview, UnknownRow } from '#explain/overview/plan-overview.js';
import { counted } from '#units/in-words.js';
import type { Block } from '../document/plan-document.js';
import { row, table, textColumn } from '../document/table.js';
import { paragraph } from '../document/text-blocks.js';
import { firstSentence } from '../parts/first-sentence.js';

/** Most lines of the table: a brief names the first, and the plan's page holds all. */
const MOST = 3;
/** Fewer where several sites of the first year need the room. */
const LEAST = 1;

/** What is not known, of the sites that come first and of money, with who clears it. */
export function unknownBlocks({ unknowns, next }: PlanOverview): readonly Block[] {
  const settled = new Set(next.sites.map(({ site }) => site));
  const others = unknowns.filter(({ site }) => !settled.has(site));
  const room = Math.max(LEAST, MOST - Math.max(0, next.sites.length - 1) * 3);
  const shown = others.slice(0, room);
  const more = others.length - shown.length;
  if (shown.length === 0) return [paragraph('Nothing else is recorded as unknown.')];
  return [unknownTable(shown, more)];
}

function unknownTable(unknowns: readonly UnknownRow[], more: number): Block {
  return table({
    caption:
      'What is not known, in the order in which the plan needs it; none of it is taken as zero',
    density: 'dense',
    columns: [
      textColumn('Of', 2),
      textColumn('Not known, and what rests on it', 5),
      textColumn('Who clears it', 3),
    ],
    rows: unknowns.map(({ site, name, what, consequence, clearedBy }) =>
      row(
        [site, name].filter((part) => part !== '').join(' '),
        `${what} ${consequence}`,
        firstSentence(clearedBy),
      ),
    ),
    ...(more > 0
      ? { note: `${counted(more, 'more question is', 'more questions are')} listed with the plan.` }
      : {}),
  });
}
