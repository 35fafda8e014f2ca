import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';

/** The built script of a thread: sources cannot run in one, so tests use the build as well. */
export function builtScript(name: string): URL {
  return pathToFileURL(createRequire(import.meta.url).resolve(`#bundles/${name}`));
}
