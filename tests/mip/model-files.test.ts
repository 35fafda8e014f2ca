/**
 * Model files are read back by readers that are not ours. HiGHS reads both formats and gives the whole
 * model, so nothing may be lost; GLPK solves the model as it stands, so the optimum may not differ.
 */
import { beforeAll, expect, test } from 'vitest';
import fc from 'fast-check';
import loadHighs, { type Highs } from 'highs';
import loadGlpk, { type GLPK } from 'glpk.js/node';
import type { Model } from '#mip/model.js';
import { ModelDraft } from '#mip/model-draft.js';
import { writeLp } from '#mip/write-lp.js';
import { writeMps } from '#mip/write-mps.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import type { Solver } from '#mip/solver.js';
import { glpkModel } from '../bench/peers/glpk-model.js';
import { ANY_MODEL, TAME_MODEL, randomModel } from '../support/mip/random-model.js';
import { namedModel, readBack } from '../support/mip/read-back.js';

let highs: Highs;
let glpk: GLPK;
let solver: Solver;
beforeAll(async () => {
  [highs, glpk, solver] = await Promise.all([loadHighs(), loadGlpk(), loadHighsSolver()]);
});

const written = (model: Model) => [
  ['mps', writeMps(model)] as const,
  ['lp', writeLp(model)] as const,
];

test('a model read back from either format is the model that was written', () => {
  fc.assert(
    fc.property(randomModel(ANY_MODEL), (model) => {
      for (const [format, text] of written(model)) {
        expect(readBack(highs, format, text), text).toEqual(namedModel(model));
      }
    }),
    { numRuns: 100 },
  );
});

test('the same model gives the same bytes, in plain ASCII with short lines', () => {
  fc.assert(
    fc.property(randomModel(ANY_MODEL), (model) => {
      for (const [, text] of written(model)) {
        expect(text).toMatch(/^[\x20-\x7e\n]*$/);
        expect(Math.max(...text.split('\n').map((line) => line.length))).toBeLessThan(256);
      }
      expect(written(model)).toEqual(written(structuredClone(model)));
    }),
  );
});

test('a second solver finds the same optimum', () => {
  let optima = 0;
  fc.assert(
    fc.property(randomModel(TAME_MODEL), (model) => {
      const ours = solver.solve(model, { limits: {}, seed: 1 });
      const theirs = glpk.solve(glpkModel(glpk, model), {
        msglev: glpk.GLP_MSG_OFF,
      });
      const found = theirs.result.status === glpk.GLP_OPT;
      expect(ours.kind).toBe(found ? 'optimal' : 'infeasible');
      if (ours.kind !== 'optimal') return;
      optima += 1;
      expect(theirs.result.z).toBeCloseTo(ours.objective, 4);
    }),
    { numRuns: 100 },
  );
  expect(optima).toBeGreaterThan(30);
});

test('a maximization is negated in MPS, which readers minimize, and says so', () => {
  const draft = new ModelDraft();
  const x = draft.addVariable({ label: 'beds of asters', kind: 'integer', upper: 3 });
  const text = writeMps(draft.build('maximize', [{ variable: x, coefficient: 2.5 }]));
  expect(text).toContain('c0 obj -2.5');
  expect(text).toContain('* To be maximized: the objective is negated');
  expect(text).toContain('* c0 beds of asters');
});
