import { randomInt } from 'node:crypto';
import type { TestProject } from 'vitest/node';
import { leftOut } from './needs.js';

/** The seed of every generated test under CI, so that one commit always gets the same cases. */
export const SEED_IN_CI = 20_350_701;

const isCi = process.env['CI'] === 'true';

declare module 'vitest' {
  interface ProvidedContext {
    /** Seed of the generated tests of this run. */
    readonly generatedTestSeed: number;
  }
}

/** Says once per run what every test file shares: the seed, and what this machine cannot run. */
export default function announce(project: TestProject): void {
  const seed = seedOfThisRun();
  project.provide('generatedTestSeed', seed);
  console.log(`Generated tests: seed ${seed} (repeat with TEST_SEED=${seed}).`);
  for (const { what, programs, remedy } of leftOut()) {
    const line = `Left out ${what}: ${programs} not found (${remedy}).`;
    if (isCi) throw new Error(line);
    console.log(line);
  }
}

/** TEST_SEED if given, the fixed one under CI, else a new one: new cases find new faults. */
function seedOfThisRun(): number {
  const given = process.env['TEST_SEED'];
  if (given !== undefined && given !== '') return Number(given);
  return isCi ? SEED_IN_CI : randomInt(2 ** 31);
}
