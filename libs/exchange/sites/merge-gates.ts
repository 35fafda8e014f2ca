import type { CampusFile } from '#contracts/campus-file.schema.js';
import { anError, type Problem } from '#domain/problem.js';
import { readCell } from './read-cell.js';
import type { SiteRow } from './site-rows.js';

type Gate = CampusFile['candidateSites'][number]['gates'][number];

interface GateMerge {
  readonly base: readonly Gate[];
  /** The site that is written to. */
  readonly draft: Record<string, unknown>;
  /** Where problems are put. */
  readonly problems: Problem[];
}

/**
 * Gates of a row by kind and status. A gate is never taken away by leaving it out, since a table that
 * lost a column would clear it: to pass it, it has to be named as passed.
 */
export function mergeGates(row: SiteRow, { base, draft, problems }: GateMerge): void {
  const stated = statedGates(row);
  const gates = base.map((gate) => ({ ...gate }));
  for (const kind of new Set(stated.map(([name]) => name))) {
    const own = gates.filter((gate) => gate.kind === kind);
    const wanted = stated.filter(([name]) => name === kind).map(([, status]) => status);
    if (sorted(own.map(({ status }) => status)) === sorted(wanted)) continue;
    const [status] = wanted;
    if (wanted.length > 1 || own.length > 1 || status === undefined) {
      problems.push(severalGates(row, kind));
    } else if (own[0]) {
      changeStatus(own[0], status);
    } else {
      gates.push(newGate(kind, status));
    }
  }
  draft['gates'] = gates;
}

type Stated = readonly [kind: string, status: Gate['status']];

function statedGates(row: SiteRow): Stated[] {
  return [...row.cells].flatMap(([column, text]) => {
    const reading = column.kind === 'gates' ? readCell(text, column) : undefined;
    const status = column.path[1] as Gate['status'];
    return reading?.ok ? (reading.value as string[]).map((kind): Stated => [kind, status]) : [];
  });
}

function sorted(words: readonly string[]): string {
  return [...words].sort().join(' ');
}

/** A year in which a gate is hoped to pass has a meaning only while it is unknown. */
function changeStatus(gate: Gate, status: Gate['status']): void {
  gate.status = status;
  if (status !== 'unknown') delete gate.plannedClearFrom;
}

/** What a table cannot tell of a new gate is put down as such; it bars all that it may bar. */
function newGate(kind: string, status: Gate['status']): Gate {
  return {
    kind: kind as Gate['kind'],
    status,
    note: 'Imported from a table of sites; nothing else is on record.',
    bars: kind === 'contamination' ? 'edible' : 'all',
    clearedBy: 'Not stated.',
  };
}

function severalGates(row: SiteRow, kind: string): Problem {
  const id = [...row.cells].find(([column]) => column.header === 'id')?.[1].trim() ?? '';
  const place = { code: 'GATE-NOT-ONE', record: `site ${id}`, field: 'gates', value: kind };
  return anError(place, [
    `More than one gate of the kind ${kind} is in the row or in the campus, so nobody can tell which is meant.`,
    'Name the kind once, or change these gates in the campus file itself.',
  ]);
}
