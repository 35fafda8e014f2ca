import { randomBytes } from 'node:crypto';
import { existsSync } from 'node:fs';
import { readFile, rename, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { PGlite } from '@electric-sql/pglite';

const entry = createRequire(import.meta.url).resolve('@electric-sql/pglite');

/** Beside the package that made it, so that a new version starts anew. */
const image = join(dirname(entry), '.empty-store.tar');

/**
 * An empty embedded store in memory. Making one takes 3-6 s, opening a copy of one about 1 s, so
 * the first one made is kept as an image for all later tests.
 */
export async function emptyEmbeddedStore(): Promise<PGlite> {
  if (existsSync(image)) {
    return PGlite.create({ loadDataDir: new Blob([await readFile(image)]) });
  }
  const store = await PGlite.create();
  const dump = await store.dumpDataDir('none');
  await keep(Buffer.from(await dump.arrayBuffer()));
  return store;
}

/** Renamed into place, since several test files may do this at the same moment. */
async function keep(bytes: Buffer): Promise<void> {
  const part = `${image}.${randomBytes(4).toString('hex')}`;
  await writeFile(part, bytes);
  await rename(part, image);
}
