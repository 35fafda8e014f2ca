import type { ImportPlan, ImportReport, ImportRow } from '#contracts/http/imports.js';
import { counted, problemLines } from './problem-lines.js';

interface Told {
  /** Left out: it was only shown. */
  readonly apply?: true | undefined;
  /** Files that were written. */
  readonly saved: readonly string[];
}

/** The report of an import as a person reads it: what changes, what is rejected and why, how it ends. */
export function importLines(report: ImportReport, { apply, saved }: Told): string[] {
  const shown = report.rows.filter(({ outcome, problems }) => {
    return outcome !== 'unchanged' || problems.length > 0;
  });
  return [
    ...problemLines(report.problems),
    ...shown.flatMap(rowLines),
    ...report.plans.flatMap(planLines),
    countsLine(report),
    endLine(report, apply),
    ...saved.map((path) => `Saved ${path}`),
  ];
}

function rowLines({ changes, outcome, place, problems, record }: ImportRow): string[] {
  return [
    place === record ? `${place}: ${outcome}` : `${place}, ${record}: ${outcome}`,
    ...changes.map(({ field, from, to }) => `  ${field}: ${shownValue(from)} -> ${shownValue(to)}`),
    ...problemLines(problems).map((line) => line.replace(` ${record}, `, ' ')),
  ];
}

function planLines({ name, outcome, problems }: ImportPlan): string[] {
  const said = outcome === 'rejected' ? 'left out' : 'passes its checks';
  return [`plan ${name}: ${said}`, ...problemLines(problems)];
}

function shownValue(text: string): string {
  return text === '' ? '(nothing)' : text.replaceAll('\n', ' / ');
}

function countsLine({ counts, rows }: ImportReport): string {
  const named = Object.entries(counts).filter(([, count]) => count > 0);
  const parts = named.map(([outcome, count]) => `${count} ${outcome}`);
  return `${counted(rows.length, 'record')} read${parts.length > 0 ? `: ${parts.join(', ')}` : ''}.`;
}

function endLine({ canApply, counts }: ImportReport, apply: Told['apply']): string {
  if (!canApply) {
    return apply
      ? 'Nothing was saved: all of a file is taken or none. Mend what is rejected and give it again.'
      : 'It cannot be saved so: mend what is rejected and give it again.';
  }
  if (counts.new + counts.changed + counts.removed === 0)
    return 'The campus says all of this already.';
  return apply ? 'Taken into the campus.' : 'Nothing was saved yet: give --apply to take it.';
}
