import type { Problem } from '#domain/problem.js';
import { fileProblem } from './whole-file.js';

export type Decoding =
  { readonly ok: true; readonly text: string } | { readonly ok: false; readonly problem: Problem };

/** The text of a file: UTF-8, or UTF-16 where a byte-order mark says so. The mark is left out. */
export function decodeText(bytes: Uint8Array): Decoding {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return decoded(bytes, 'utf-16le');
  if (first === 0xfe && second === 0xff) return decoded(bytes, 'utf-16be');
  return decoded(bytes, 'utf-8');
}

function decoded(bytes: Uint8Array, encoding: string): Decoding {
  try {
    const text = new TextDecoder(encoding, { fatal: true }).decode(bytes);
    if (!text.includes('\u0000')) return { ok: true, text };
  } catch {
    // Told below: there is one cause of it.
  }
  return {
    ok: false,
    problem: fileProblem('FILE-ENCODING', [
      'The file is no text in UTF-8: a spreadsheet most likely saved it in an older encoding.',
      'Save it anew as "CSV UTF-8", so that no accent or sign is read wrongly.',
    ]),
  };
}
