import type { PlanOverview, PromiseRow } from '#explain/overview/plan-overview.js';
import { capitalized } from '#units/in-words.js';
import type { Block } from '../document/plan-document.js';
import { row, table, textColumn } from '../document/table.js';
import { paragraph } from '../document/text-blocks.js';

/** How far each promise is kept: those that are not in lines of their own, the others by name. */
export function promiseBlocks({ promises }: PlanOverview): readonly Block[] {
  const kept = promises.filter(({ status }) => status === 'kept');
  const open = promises.filter(({ status }) => status !== 'kept');
  const keptSentence = kept.length === 0 ? '' : `Kept in full. ${byStrength(kept)}`;
  if (promises.length === 0) return [paragraph('The campus file records no promise.')];
  return open.length === 0 ? [paragraph(keptSentence)] : [openTable(open, keptSentence)];
}

/** `Binding: A; B. Intended: C.` */
function byStrength(promises: readonly PromiseRow[]): string {
  return STRENGTHS.flatMap((strength) => {
    const names = promises.filter((p) => p.strength === strength).map(({ name }) => name);
    return names.length === 0 ? [] : [`${capitalized(strength)}: ${names.join('; ')}.`];
  }).join(' ');
}

const STRENGTHS: readonly PromiseRow['strength'][] = ['binding', 'intended', 'aspiration'];

function openTable(promises: readonly PromiseRow[], note: string): Block {
  return table({
    caption: 'Promises that are not kept in full',
    density: 'compact',
    columns: [
      textColumn('Promise', 3.4),
      textColumn('Strength', 1.2),
      textColumn('In this plan', 5),
    ],
    rows: promises.map(({ name, strength, status, sentence }) =>
      row(name, strength, [{ text: `${status}. `, bold: true }, { text: sentence }]),
    ),
    ...(note === '' ? {} : { note }),
  });
}
