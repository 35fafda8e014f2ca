import { accessSync, constants } from 'node:fs';
import { delimiter, isAbsolute, join } from 'node:path';

/** The full path of a program by its name on PATH (or by a full path), if it can be run. */
export function findProgram(name: string): string | undefined {
  if (isAbsolute(name)) return canRun(name) ? name : undefined;
  const folders = (process.env['PATH'] ?? '').split(delimiter).filter((folder) => folder !== '');
  return folders.map((folder) => join(folder, name)).find(canRun);
}

function canRun(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
