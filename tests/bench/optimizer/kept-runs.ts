import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { PeerRun } from '../peers/outcome.js';

/**
 * Results kept in a folder by what they are of, so that a long table can be made in pieces. A run that
 * failed is not kept: it is tried again.
 */
export class KeptRuns {
  constructor(
    private readonly folder: string,
    private readonly mode: 'run' | 'only-kept',
  ) {
    mkdirSync(folder, { recursive: true });
  }

  /** The kept result of this name, else a new one; `undefined` where only kept ones are wanted. */
  async get<T extends object>(name: string, make: () => Promise<T>): Promise<T | undefined> {
    const path = join(this.folder, `${name}.json`);
    if (existsSync(path)) return JSON.parse(readFileSync(path, 'utf8')) as T;
    if (this.mode === 'only-kept') return undefined;
    const made = await make();
    if (!hasFailed(made)) writeFileSync(path, JSON.stringify(made));
    return made;
  }
}

/** A run that ended as failed, or a list that came out empty. */
function hasFailed(made: object): boolean {
  if (Array.isArray(made)) return made.length === 0;
  return (made as Partial<PeerRun>).ended === 'failed';
}

/** A short name of some text. */
export function fingerprint(...texts: readonly string[]): string {
  const hash = createHash('sha256');
  for (const text of texts) hash.update(text).update('\0');
  return hash.digest('hex').slice(0, 12);
}

/** The parts that a solve of ours is made of. */
const SOLVING = [
  'domain',
  'estimating',
  'mip',
  'optimizer',
  'rules',
  'solver-highs',
  'solving',
  'units',
];

/** A short name of our built solver: another build's runs are not taken for its own. */
export function ourBuild(): string {
  const libs = fileURLToPath(new URL('../../../libs', import.meta.url));
  const files = SOLVING.flatMap((part) =>
    readdirSync(join(libs, part), { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.js'))
      .sort()
      .map((file) => readFileSync(join(libs, part, file), 'utf8')),
  );
  return fingerprint(...files);
}
