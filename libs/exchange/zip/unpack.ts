import { Unzip, UnzipInflate, unzipSync } from 'fflate';
import type { Problem } from '#domain/problem.js';
import { MOST_ENTRIES, MOST_RATIO, MOST_UNPACKED_BYTES } from '../limits.js';
import { fileProblem } from '../reading/whole-file.js';

interface Entry {
  readonly name: string;
  /** Unpacked size that the archive states, in bytes. */
  readonly size: number;
}

export type Unpacking =
  | { readonly ok: true; readonly files: ReadonlyMap<string, Uint8Array> }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** What an archive says that it holds. Nothing is unpacked. Undefined: it is no archive, or damaged. */
function entriesOf(bytes: Uint8Array): readonly Entry[] | undefined {
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
function bombProblems(bytes: Uint8Array, entries: readonly Entry[]): Problem[] {
  const unpacked = entries.reduce((sum, { size }) => sum + size, 0);
  return entries.length > MOST_ENTRIES || unpacked > mostOf(bytes) ? [tooLarge()] : [];
}

/** Most that an archive may hold: what is honest is packed to a hundredth at best. */
function mostOf(bytes: Uint8Array): number {
  return Math.min(MOST_UNPACKED_BYTES, Math.max(1_000_000, bytes.length * MOST_RATIO));
}

/** Compressed bytes that are unpacked at a time; they become a thousandfold at most. */
const PIECE = 16 * 1024;

class TooMuch extends Error {}

/**
 * Unpacks an archive piece by piece, and stops where more comes out than may: the sizes that an
 * archive states of itself may be a lie.
 */
export function unpack(bytes: Uint8Array): Unpacking {
  const entries = entriesOf(bytes);
  if (entries === undefined) return { ok: false, problems: [damaged()] };
  const problems = bombProblems(bytes, entries);
  if (problems.length > 0) return { ok: false, problems };
  try {
    const files = unpacked(bytes);
    return files.size === entries.length
      ? { ok: true, files }
      : { ok: false, problems: [damaged()] };
  } catch (error) {
    return { ok: false, problems: [error instanceof TooMuch ? tooLarge() : damaged()] };
  }
}

function unpacked(bytes: Uint8Array): Map<string, Uint8Array> {
  const files = new Map<string, Uint8Array>();
  let left = mostOf(bytes);
  const unzip = new Unzip((file) => {
    const chunks: Uint8Array[] = [];
    file.ondata = (error, chunk, isLast) => {
      if (error) throw error;
      left -= chunk.length;
      if (left < 0) throw new TooMuch();
      chunks.push(chunk);
      if (isLast) files.set(file.name, new Uint8Array(Buffer.concat(chunks)));
    };
    file.start();
  });
  unzip.register(UnzipInflate);
  for (let at = 0; at < bytes.length; at += PIECE) {
    unzip.push(bytes.subarray(at, at + PIECE), at + PIECE >= bytes.length);
  }
  return files;
}

function tooLarge(): Problem {
  return fileProblem('ARCHIVE-TOO-LARGE', [
    'Unpacked, the file would hold far too much, so it is not opened.',
    'Give a file that this program or a spreadsheet program wrote, with less in it.',
  ]);
}

function damaged(): Problem {
  return fileProblem('ARCHIVE-DAMAGED', [
    'The archive is cut off or damaged.',
    'Fetch or export it again.',
  ]);
}
