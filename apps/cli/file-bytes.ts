import { readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { CommandFailure, EXIT } from './exit-codes.js';
import { reasonOf } from './read-files.js';

/** More than any import may be; what is larger is not even read. */
const MOST_BYTES = 64 * 1024 * 1024;

/** The bytes of a file a user named. */
export async function readBytes(path: string): Promise<Uint8Array> {
  try {
    const { size } = await stat(path);
    if (size > MOST_BYTES) throw new Error('it is far larger than a campus; look at the name');
    return await readFile(path);
  } catch (error) {
    throw new CommandFailure(EXIT.badInput, [`${path} cannot be read: ${reasonOf(error)}`]);
  }
}

/** Puts a text in the place of a file as a whole: whoever reads meanwhile sees the old or the new. */
export async function replaceFile(path: string, text: string): Promise<void> {
  const beside = `${path}.new`;
  try {
    await writeFile(beside, text);
    await rename(beside, path);
  } catch (error) {
    await rm(beside, { force: true });
    throw new CommandFailure(EXIT.badInput, [`${path} cannot be written: ${reasonOf(error)}`]);
  }
}

/** JSON as people read it, each position on one line. A line end within brackets is never of a text. */
export function jsonText(document: object): string {
  const text = JSON.stringify(document, null, 2);
  return `${text.replace(/\[\n\s+(-?[\d.e+-]+),\n\s+(-?[\d.e+-]+)\n\s+\]/gi, '[$1, $2]')}\n`;
}
