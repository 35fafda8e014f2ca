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
      const load = loadCampusFile(generatedFile({ sites, years, kind, seed }));
      const all = load.ok ? load.warnings : load.problems;
      // The demo's build types have warnings of their own, which are not the generator's.
      const problems = all.filter(({ record }) => !record.startsWith('build type'));
      expect(problems.map((p) => `${p.record} ${p.field}: ${p.problem}`)).toEqual([]);
      expect(load.ok && load.campus.candidates.length).toBe(sites);
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
