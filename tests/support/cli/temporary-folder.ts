import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll } from 'vitest';

export interface TemporaryFolder {
  /** The path of a name in the folder. */
  readonly at: (name: string) => string;
  /** Writes a value as JSON; answers the path. */
  readonly save: (name: string, value: unknown) => Promise<string>;
}

/** A folder that lasts for the tests of one file. */
export function temporaryFolder(): TemporaryFolder {
  let folder = '';
  const at = (name: string) => join(folder, name);
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'campus-plan-'));
  });
  afterAll(() => rm(folder, { recursive: true, force: true }));
  return {
    at,
    save: async (name, value) => {
      await writeFile(at(name), JSON.stringify(value));
      return at(name);
    },
  };
}
