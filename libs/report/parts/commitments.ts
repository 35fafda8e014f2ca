import type { Commitment } from '#domain/commitment.js';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { dayInWords } from '#units/dates-in-words.js';
import { bold } from '../document/inline.js';
import type { Block } from '../document/plan-document.js';
import { row, table, textColumn } from '../document/table.js';
import { paragraph } from '../document/text-blocks.js';

/** Every promise with who made it to whom, and how the plan keeps it. */
export function commitmentTable(
  { promises }: PlanOverview,
  commitments: readonly Commitment[],
): Block {
  if (promises.length === 0) return paragraph('The campus file records no promise.');
  const of = new Map(commitments.map((one) => [one.id, one]));
  return table({
    caption: 'Commitments: what was promised, by whom, and how this plan keeps it',
    density: 'compact',
    columns: [
      textColumn('Promise', 3),
      textColumn('Strength', 1.3),
      textColumn('Said by, to whom, where', 3.4),
      textColumn('In this plan', 3.6),
    ],
    rows: promises.map(({ id, name, strength, status, sentence }) =>
      row(name, strength, saidIn(of.get(id)), [bold(`${status}. `), { text: sentence }]),
    ),
  });
}

function saidIn(commitment: Commitment | undefined): string {
  if (!commitment) return 'not recorded';
  const { saidBy, saidTo, document, date } = commitment;
  return `${saidBy}, to ${saidTo}; ${document}, ${dayInWords(date)}`;
}
