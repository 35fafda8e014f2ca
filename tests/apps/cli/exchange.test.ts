import { readFile, writeFile } from 'node:fs/promises';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { beforeAll, describe, expect, test } from 'vitest';
import { canonicalJson, digestOf } from '#contracts/canonical.js';
import { writePlanFile } from '#contracts/plan-file.js';
import { constructedPlanFile } from '../../support/cli/constructed-plan.js';
import { runCommand } from '../../support/cli/run-command.js';
import { SMALL_CAMPUS } from '../../support/cli/small-campus.js';
import { temporaryFolder } from '../../support/cli/temporary-folder.js';

const folder = temporaryFolder();
const at = folder.at;
const json = async (path: string) => JSON.parse(await readFile(path, 'utf8'));

beforeAll(async () => {
  const plan = constructedPlanFile(await readFile(SMALL_CAMPUS, 'utf8'));
  await writeFile(at('plan.json'), writePlanFile(plan));
});

const exporting = (format: string, out: string, ...more: string[]) =>
  runCommand(
    'export',
    SMALL_CAMPUS,
    at('plan.json'),
    '--format',
    format,
    '--out',
    at(out),
    ...more,
  );

describe('export', () => {
  test.each([
    ['geojson', [], '"planned_year":"FY2028"'],
    ['csv', [], 'planned_year,planned_build_type'],
    ['csv', ['--table', 'schedule'], 'fiscal_year,site,name,zone,build_type\r\nFY2028,S-1,'],
    ['csv', ['--table', 'care-hours'], 'FY2028,summer,care-food,'],
    ['csv', ['--table', 'ledger'], 'FY2028,capital,0,build,S-1,'],
    ['csv', ['--table', 'ledger', '--audience', 'public'], 'FY2029,gift,0,build,'],
    ['csv', ['--table', 'dictionary'], 'ledger,amount_usd,US dollars of the year,'],
    ['ics', ['--year', '2029'], 'UID:care-fall-FY2029@small-campus.campus-plan'],
  ])('writes %s %j', async (format, more, holds) => {
    const { code } = await exporting(format, 'out.txt', ...more);
    expect(code).toBe(0);
    expect(await readFile(at('out.txt'), 'utf8')).toContain(holds);
  });

  test('needs a plan for what a plan works out', async () => {
    const out = at('none.ics');
    const { code, notes } = await runCommand(
      'export',
      SMALL_CAMPUS,
      '--format',
      'ics',
      '--out',
      out,
    );
    expect(code).toBe(2);
    expect(notes).toMatch(/give the plan file after the campus file/);
  });

  test('writes nothing of a plan that does not pass its checks', async () => {
    const edited = await json(at('plan.json'));
    edited.plan.placements[0].year = 'FY2030';
    await writeFile(at('edited.json'), JSON.stringify(edited));
    const args = ['--format', 'geojson', '--out', at('never.geojson')];
    const { code, notes } = await runCommand('export', SMALL_CAMPUS, at('edited.json'), ...args);
    expect(code).toBe(3);
    expect(notes).toMatch(/does not pass its checks, so it is not exported/);
    await expect(readFile(at('never.geojson'))).rejects.toThrow();
  });
});

describe('import', () => {
  const campus = at.bind(null, 'campus.json');
  beforeAll(async () => writeFile(campus(), await readFile(SMALL_CAMPUS)));

  test('shows first and saves nothing, then saves, then finds that all is said already', async () => {
    await writeFile(at('sites.csv'), 'id,walkers_per_day\nS-1,4321\n');
    const before = await readFile(campus(), 'utf8');
    const shown = await runCommand('import', campus(), at('sites.csv'));
    expect(shown.code).toBe(0);
    expect(shown.out).toMatch(/^row 2, site S-1: changed\n {2}walkers_per_day: .* -> 4321\n/);
    expect(shown.out).toMatch(/1 record read: 1 changed\.\nNothing was saved yet/);
    expect(await readFile(campus(), 'utf8')).toBe(before);

    const saved = await runCommand('import', campus(), at('sites.csv'), '--apply');
    expect(saved.out).toMatch(/Taken into the campus\.\nSaved /);
    const { candidateSites, ...rest } = await json(campus());
    expect(candidateSites[0].facts.walkersPerDay).toBe(4321);
    const { candidateSites: were, ...others } = JSON.parse(before);
    were[0].facts.walkersPerDay = 4321;
    expect(candidateSites).toEqual(were);
    expect(rest).toEqual(others);

    const again = await runCommand('import', campus(), at('sites.csv'), '--apply');
    expect(again.out).toMatch(/1 unchanged\.\nThe campus says all of this already\.$/);
  });

  test('saves none of it while one record is rejected, and says so with exit code 2', async () => {
    await writeFile(at('half.csv'), 'id,name,ph\nS-1,Renamed,\nS-2,,"6,8"\n');
    const before = await readFile(campus(), 'utf8');
    const { code, out } = await runCommand('import', campus(), at('half.csv'), '--apply');
    expect(code).toBe(2);
    expect(out).toMatch(/CELL-DECIMAL-COMMA {2}ph: 6,8 has a decimal comma\. Write 6\.8/);
    expect(out).toMatch(/Nothing was saved: all of a file is taken or none/);
    expect(await readFile(campus(), 'utf8')).toBe(before);
  });

  test('hands a campus over with its plans in one file', async () => {
    await exporting('bundle', 'all.zip');
    const out = at('restored.json');
    const args = [at('all.zip'), '--apply', '--out', out];
    const { code, out: said } = await runCommand('import', campus(), ...args);
    expect(code).toBe(0);
    expect(said).toMatch(/Saved .*restored\.json\nSaved .*restored-plan\.json$/);
    expect(canonicalJson(await json(out))).toBe(canonicalJson(await json(SMALL_CAMPUS)));
    const verified = await runCommand('verify', out, at('restored-plan.json'));
    expect(verified.code).toBe(0);
  });

  test('leaves out a plan of a bundle that does not pass its checks, and takes the campus', async () => {
    await exporting('bundle', 'sound.zip');
    const parts = unzipSync(await readFile(at('sound.zip')));
    const plan = JSON.parse(strFromU8(parts['plans/plan.json']!));
    plan.plan.spending[0].dollars += 0.01;
    const manifest = JSON.parse(strFromU8(parts['bundle.json']!));
    manifest.plans[0].digest = digestOf(plan);
    const changed = { 'plans/plan.json': plan, 'bundle.json': manifest };
    const texts = Object.entries(changed).map(([name, part]) => [
      name,
      strToU8(JSON.stringify(part)),
    ]);
    await writeFile(at('unsound.zip'), zipSync({ ...parts, ...Object.fromEntries(texts) }));
    const args = [at('unsound.zip'), '--apply', '--out', at('without.json')];
    const { code, out } = await runCommand('import', campus(), ...args);
    expect(code).toBe(0);
    expect(out).toMatch(/plan plan: left out\n +error +PLAN-REFUSED .*does not pass the checks/);
    expect(out).toMatch(/Saved .*without\.json$/);
    await expect(readFile(at('without-plan.json'))).rejects.toThrow();
  });

  test('tells a machine the same', async () => {
    const { code, out } = await runCommand('import', campus(), at('half.csv'), '--json');
    expect(code).toBe(2);
    expect(JSON.parse(out)).toMatchObject({ canApply: false, counts: { rejected: 1 }, saved: [] });
  });

  test('does not write a file that was asked for without --apply', async () => {
    const args = [at('sites.csv'), '--out', at('x.json')];
    const { code, notes } = await runCommand('import', campus(), ...args);
    expect(code).toBe(2);
    expect(notes).toMatch(/A file is written only with --apply/);
  });
});
