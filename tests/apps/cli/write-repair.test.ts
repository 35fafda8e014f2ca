/**
 * Every repair of a campus that has no plan, written as a campus file by the command and solved anew by it:
 * each has a plan, and the checker, which knows nothing of repairs, verifies it.
 */
import { expect, test } from 'vitest';
import type { CampusFile } from '#contracts/campus-file.schema.js';
import type { ConflictsAnswer } from '#explain/questions/conflicts/answer.js';
import { runCommand } from '../../support/cli/run-command.js';
import { smallCampus } from '../../support/cli/small-campus.js';
import { temporaryFolder } from '../../support/cli/temporary-folder.js';

const folder = temporaryFolder();

/** Every promise is binding, nothing is placed by hand, and there is nothing to build with. */
function torn(file: CampusFile): void {
  for (const fund of file.funds.filter(({ kind }) => kind === 'capital' || kind === 'reserve')) {
    Object.assign(fund, { openingBalanceDollars: 0, floorDollars: 0, inflows: [] });
    delete fund.yearlyInflows;
  }
  file.handPlacements = [];
  for (const commitment of file.commitments) {
    if (commitment.strength === 'intended') commitment.strength = 'binding';
  }
}

test('each repair, written into a file, is solved and verified', { timeout: 120_000 }, async () => {
  const campus = await folder.save('torn.json', smallCampus(torn));
  const asking = ['conflicts', campus, '--seconds', '10', '--work', '2'];
  const { out } = await runCommand(...asking, '--json');
  const { repairs } = JSON.parse(out) as ConflictsAnswer;
  expect(repairs.length).toBeGreaterThan(1);
  for (const [i] of repairs.entries()) {
    const repaired = folder.at(`repair-${i + 1}.json`);
    const wish = ['--write-repair', String(i + 1), '--out', repaired];
    const { code, notes } = await runCommand(...asking, ...wish);
    expect([code, notes.split('\n').at(-1)]).toEqual([
      4,
      `Saved in ${repaired}, changed by repair ${i + 1}; the campus file itself is as it was.`,
    ]);
    const plan = folder.at(`repair-${i + 1}.plan.json`);
    const solved = await runCommand('solve', repaired, '--work', '20', '--plan', plan);
    expect(solved.code, solved.out).toBe(0);
    expect((await runCommand('verify', repaired, plan)).code).toBe(0);
  }
});

test('a repair that there is not, or half a wish, is refused with what to do', async () => {
  const campus = await folder.save('torn.json', smallCampus(torn));
  const out = folder.at('none.json');
  const half = await runCommand('conflicts', campus, '--write-repair', '1');
  expect([half.code, half.notes]).toEqual([
    2,
    'Give both --write-repair, the number of the repair, and --out, the file to write.',
  ]);
  const wish = ['--seconds', '5', '--write-repair', '99', '--out', out];
  const none = await runCommand('conflicts', campus, ...wish);
  expect(none.code).toBe(2);
  expect(none.notes).toMatch(/There is no repair 99; the answer has \d+\./);
});
