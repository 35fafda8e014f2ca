/** Model files are taken by two commands that are not ours, CBC and glpsol, and have the same optimum. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Model } from '#mip/model.js';
import type { Solver } from '#mip/solver.js';
import { writeLp } from '#mip/write-lp.js';
import { writeMps } from '#mip/write-mps.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import { runCbc } from '../bench/peers/cbc.js';
import { runGlpsol } from '../bench/peers/glpsol.js';
import {
  knapsackModel,
  LORIE_SAVAGE_KNAPSACK,
  OR_LIBRARY,
} from '../support/knapsacks/knapsacks.js';
import { hardModel } from '../support/tiny/rows-hold.js';
import { tinyCampus, tinyFund, tinySite } from '../support/tiny/tiny-campus.js';

let solver: Solver;
let folder: string;
beforeAll(async () => {
  solver = await loadHighsSolver();
  folder = mkdtempSync(join(tmpdir(), 'model-files-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

const PEERS = [
  ['cbc', runCbc],
  ['glpsol', runGlpsol],
] as const;
const FORMATS = [
  ['mps', writeMps],
  ['lp', writeLp],
] as const;

const poor = tinyCampus({
  funds: [tinyFund('capital', 35_000, { carry: 0 })],
  candidates: [tinySite('A'), tinySite('B', { areaSqFt: 3000 }), tinySite('C', { areaSqFt: 4100 })],
});
const MODELS: readonly (readonly [string, Model])[] = [
  ['Lorie-Savage', knapsackModel(LORIE_SAVAGE_KNAPSACK)],
  ...OR_LIBRARY.slice(0, 5).map((p) => [p.name, knapsackModel(p)] as const),
  ['a tiny campus with enough of everything', hardModel(tinyCampus()).model],
  ['a tiny campus short of money', hardModel(poor).model],
];

describe.each(PEERS)('%s', (_, run) => {
  describe.each(FORMATS)('reads %s', (format, write) => {
    test.each(MODELS)('%s', async (name, model) => {
      const path = join(folder, `${name.replace(/\W/g, '-')}.${format}`);
      writeFileSync(path, write(model));
      const theirs = await run({ path, format, sense: model.sense, seconds: 60 });
      const ours = solver.solve(model, { limits: {}, seed: 1 });
      if (ours.kind !== 'optimal') throw new Error(`ours ended ${ours.kind}`);
      expect(theirs.ended).toBe('optimal');
      const within = 1e-6 * Math.max(1, Math.abs(ours.objective));
      expect(Math.abs((theirs.objective ?? NaN) - ours.objective)).toBeLessThan(within);
    });

    test('a model without a solution', async () => {
      const model = hardModel(poor).model;
      const impossible = { ...model, rowLower: Float64Array.from(model.rowLower).fill(1e6) };
      const rowUpper = Float64Array.from(model.rowUpper).fill(2e6);
      const path = join(folder, `impossible.${format}`);
      writeFileSync(path, write({ ...impossible, rowUpper }));
      expect((await run({ path, format, sense: 'maximize', seconds: 60 })).ended).toBe(
        'infeasible',
      );
    });
  });
});
