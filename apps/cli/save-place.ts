import { access, constants, stat } from 'node:fs/promises';
import { dirname } from 'node:path';
import { CommandFailure, EXIT } from './exit-codes.js';
import { reasonOf } from './read-files.js';

/**
 * Makes sure that a file can be saved before the work that it is to hold: a solve is not lost at its
 * end for want of a folder, and never written over the campus file that it read.
 */
export async function ensureCanSave(path: string, campusPath: string): Promise<void> {
  const refuse = (reason: string): never => {
    throw new CommandFailure(EXIT.badInput, [`${path} cannot be written: ${reason}`]);
  };
  const [there, campus] = await Promise.all([statOf(path), stat(campusPath)]);
  if (there?.isDirectory()) refuse('it is a folder; give a file');
  if (there?.ino === campus.ino && there.dev === campus.dev) {
    refuse('it is the campus file itself; give another name');
  }
  // The dot asks for a folder: a file of that name would be writable, and yet hold no file.
  const place = there ? path : `${dirname(path)}/.`;
  await access(place, constants.W_OK).catch((error: unknown) => refuse(reasonOf(error)));
}

/** `undefined` where nothing stands at the path yet. */
async function statOf(path: string) {
  try {
    return await stat(path);
  } catch {
    return undefined;
  }
}
