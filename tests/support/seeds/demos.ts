import { readFileSync } from 'node:fs';
import type { CampusFile } from '#contracts/campus-file.schema.js';
import type { Campus } from '#domain/campus.js';
import type { Problem } from '#domain/problem.js';
import { loadCampusFile } from '#planning/load-campus-file.js';

/** One state of the demo campus, as its file says it and as it is loaded. */
export interface Demo {
  readonly file: CampusFile;
  readonly campus: Campus;
  readonly warnings: readonly Problem[];
}

export const DEMO_NAMES = ['healthy', 'strained', 'impossible'] as const;

export type DemoName = (typeof DEMO_NAMES)[number];

const demos = new Map<DemoName, Demo>();

/** A state of the demo campus, loaded once for all test files of a worker, which leave it as it is. */
export function demo(name: DemoName): Demo {
  const known = demos.get(name);
  if (known) return known;
  const load = loadCampusFile(readFileSync(`seeds/demo-${name}.json`, 'utf8'));
  if (!load.ok) throw new Error(`demo-${name}: ${JSON.stringify(load.problems, null, 1)}`);
  demos.set(name, load);
  return load;
}
