import { describe, expect, test } from 'vitest';
import { loadCampusFile } from '#planning/load-campus-file.js';
import { generatedFile } from './generated-program.js';
import { KINDS } from './shape.js';

const SHAPES = [
  [20, 30],
  [36, 50],
  [120, 50],
] as const;

describe.each(KINDS)('generated programs, %s', (kind) => {
  test.each(SHAPES)('%i sites and %i years load without a complaint', (sites, years) => {
    for (const seed of [1, 2, 3]) {
      const file = generatedFile({ sites, years, kind, seed });
      const load = loadCampusFile(file);
      const all = load.ok ? load.warnings : load.problems;
      // The demo's build types have warnings of their own, which are not the generator's.
      const problems = all.filter(({ record }) => !record.startsWith('build type'));
      expect(problems.map((p) => `${p.record} ${p.field}: ${p.problem}`)).toEqual([]);
      // No gate is closed by what the generator says of the ground: a promised site stays open.
      const gates = load.ok && load.campus.candidates.map((site) => site.gates.length);
      expect(gates).toEqual(file.candidateSites.map((site) => site.gates.length));
    }
  });
});

test('the same seed gives the same program, another seed another', () => {
  const shape = { sites: 20, years: 30, kind: 'tight', seed: 7 } as const;
  expect(generatedFile(shape)).toEqual(generatedFile(shape));
  expect(generatedFile({ ...shape, seed: 8 })).not.toEqual(generatedFile(shape));
});

test('sites become of as many types as asked for', () => {
  const file = generatedFile({ sites: 20, years: 30, kind: 'tight', seed: 7, types: 4 });
  expect(file.candidateSites.every((site) => site.buildTypes.length === 4)).toBe(true);
});
