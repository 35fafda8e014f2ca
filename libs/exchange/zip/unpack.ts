import { unzipSync } from 'fflate';
import { anError, type Problem } from '#domain/problem.js';
import { MOST_ENTRIES, MOST_RATIO, MOST_UNPACKED_BYTES } from '../limits.js';

export interface Entry {
  readonly name: string;
  /** Unpacked size that the archive states, in bytes. */
  readonly size: number;
}

export type Unpacking =
  | { readonly ok: true; readonly files: ReadonlyMap<string, Uint8Array> }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** What an archive says that it holds. Nothing is unpacked. Undefined: it is no archive, or damaged. */
export function entriesOf(bytes: Uint8Array): readonly Entry[] | undefined {
  const entries: Entry[] = [];
  try {
    unzipSync(bytes, {
      filter: ({ name, originalSize: size }) => {
        entries.push({ name, size });
        return false;
      },
    });
    return entries;
  } catch {
    return undefined;
  }
}

/** Why an archive is not unpacked: too many files, or far more in it than its size lets expect. */
export function bombProblems(bytes: Uint8Array, entries: readonly Entry[]): Problem[] {
  const unpacked = entries.reduce((sum, { size }) => sum + size, 0);
  const bomb =
    entries.length > MOST_ENTRIES ||
    unpacked > MOST_UNPACKED_BYTES ||
    unpacked > Math.max(1_000_000, bytes.length * MOST_RATIO);
  if (!bomb) return [];
  const megabytes = Math.ceil(unpacked / 1024 / 1024).toLocaleString('en-US');
  return [
    anError({ code: 'ARCHIVE-TOO-LARGE', record: 'the file', field: '' }, [
      `Unpacked, the file would hold ${entries.length} parts of ${megabytes} MB together, so it is not opened.`,
      'Give a file that this program or a spreadsheet program wrote, with less in it.',
    ]),
  ];
}

/**
 * Unpacks an archive whose stated sizes are fair. No entry can take more than it states: the space
 * for it is set aside beforehand.
 */
export function unpack(bytes: Uint8Array): Unpacking {
  const entries = entriesOf(bytes);
  if (entries === undefined) return { ok: false, problems: [damaged()] };
  const problems = bombProblems(bytes, entries);
  if (problems.length > 0) return { ok: false, problems };
  try {
    return { ok: true, files: new Map(Object.entries(unzipSync(bytes))) };
  } catch {
    return { ok: false, problems: [damaged()] };
  }
}

function damaged(): Problem {
  return anError({ code: 'ARCHIVE-DAMAGED', record: 'the file', field: '' }, [
    'The archive is cut off or damaged.',
    'Fetch or export it again.',
  ]);
}
