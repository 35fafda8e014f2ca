import type { LimitRow, PlanOverview } from '#explain/overview/plan-overview.js';
import { capitalized, listInWords } from '#units/in-words.js';
import type { Block } from '../document/plan-document.js';
import { row, table, textColumn } from '../document/table.js';
import { busySeasonRows } from './season.js';

/** When each resource first runs short; quiet seasons are told in one sentence. */
export function limitBlocks(overview: PlanOverview): readonly Block[] {
  const busiest = `${busySeasonRows(overview)[0]?.season ?? ''} hours`;
  const quiet = overview.limits.filter(
    ({ resource, year }) => year === null && resource.endsWith(' hours') && resource !== busiest,
  );
  const shown = overview.limits.filter((limit) => !quiet.includes(limit));
  if (shown.length === 0) return [];
  return [limitTable(shown, quiet)];
}

function limitTable(limits: readonly LimitRow[], quiet: readonly LimitRow[]): Block {
  return table({
    caption: 'What runs short first, without what is only proposed',
    density: 'dense',
    columns: [
      textColumn('Resource', 1.4),
      textColumn('First short in', 2.3),
      textColumn('What it means', 6),
    ],
    rows: limits.map(({ resource, label, sentence }) =>
      row(capitalized(resource), label ?? 'not in this plan', sentence),
    ),
    ...(quiet.length === 0 ? {} : { note: quietSentence(quiet) }),
  });
}

function quietSentence(quiet: readonly LimitRow[]): string {
  const names = quiet.map(({ resource }) => resource.replace(/ hours$/, ''));
  return `${capitalized(listInWords(names))} hours do not run short in this plan.`;
}
