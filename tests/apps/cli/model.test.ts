import { readFile, writeFile } from 'node:fs/promises';
import { beforeAll, expect, test } from 'vitest';
import loadHighs, { type Highs } from 'highs';
import { writePlanFile } from '#contracts/plan-file.js';
import { constructedPlanFile } from '../../support/cli/constructed-plan.js';
import { runCommand } from '../../support/cli/run-command.js';
import { SMALL_CAMPUS } from '../../support/cli/small-campus.js';
import { temporaryFolder } from '../../support/cli/temporary-folder.js';

const folder = temporaryFolder();
const at = folder.at;
let highs: Highs;

beforeAll(async () => {
  highs = await loadHighs();
  const plan = constructedPlanFile(await readFile(SMALL_CAMPUS, 'utf8'));
  await writeFile(at('plan.json'), writePlanFile(plan));
});

/** The optimum that another reader finds in the linear relaxation of a file. */
async function relaxedOptimum(name: string, format: 'mps' | 'lp'): Promise<number> {
  const data = await readFile(at(name), 'utf8');
  return highs.withModel({ format, data }, (native) => {
    native.options.set({ output_flag: false, solve_relaxation: true });
    native.run();
    expect(native.getModelStatus()).toBe(highs.constants.modelStatus.optimal);
    return native.getObjectiveValue();
  });
}

test('both formats hold the same model, with the tiers before it at what the plan reaches', async () => {
  const args = [SMALL_CAMPUS, at('plan.json'), '--tier', 'benefit'];
  const mps = await runCommand('model', ...args, '--out', at('m.mps'), '--json');
  const lp = await runCommand('model', ...args, '--format', 'lp', '--out', at('m.lp'));
  expect([mps.code, lp.code]).toEqual([0, 0]);
  expect(JSON.parse(mps.out)).toMatchObject({ tier: 'benefit' });
  expect(JSON.parse(mps.out).heldTiers.slice(0, 2)).toEqual(['unserved-peak', 'unserved-total']);
  expect(lp.out).toBe(`Wrote ${at('m.lp')}`);
  const [negated, optimum] = [
    await relaxedOptimum('m.mps', 'mps'),
    await relaxedOptimum('m.lp', 'lp'),
  ];
  expect(optimum).toBeGreaterThan(0);
  expect(-negated / optimum).toBeCloseTo(1, 7);
});

test('without a plan nothing is held, and that is said', async () => {
  const { code, notes } = await runCommand('model', SMALL_CAMPUS, '--out', at('free.mps'));
  expect(code).toBe(0);
  expect(notes).toContain('No earlier tier is held');
});

test('a tier that is not there is refused with those that are', async () => {
  const run = await runCommand('model', SMALL_CAMPUS, '--tier', 'beauty', '--out', at('x.mps'));
  expect(run.code).toBe(2);
  expect(run.notes).toContain('The tiers of this campus are unserved-peak, unserved-total,');
});
