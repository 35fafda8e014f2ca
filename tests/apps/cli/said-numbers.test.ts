/**
 * Every number that a reader is told stands in the JSON of the same answer: the text is what the command
 * prints of that JSON, and each sentence is held against the numbers of its own row.
 */
import { expect, test } from 'vitest';
import { additionsLines } from '#apps/cli/lines/additions-lines.js';
import { campusesLines, plansLines } from '#apps/cli/lines/compare-lines.js';
import { conflictsLines } from '#apps/cli/lines/conflicts-lines.js';
import { futuresLines } from '#apps/cli/lines/futures-lines.js';
import { limitsLines } from '#apps/cli/lines/limits-lines.js';
import { nextSiteLines } from '#apps/cli/lines/next-site-lines.js';
import { promisesLines } from '#apps/cli/lines/promises-lines.js';
import { whyLines } from '#apps/cli/lines/why-lines.js';
import type { ConflictsAnswer } from '#explain/questions/conflicts/answer.js';
import type { PlansCompared } from '#explain/questions/compare/compare-plans.js';
import type { CampusFile } from '#contracts/campus-file.schema.js';
import type { Campus } from '#domain/campus.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { constructedPlanFile, planFileOfDecisions } from '../../support/cli/constructed-plan.js';
import { shortCampus, shortDecisions } from '../../support/cli/edited-plans.js';
import { runCommand } from '../../support/cli/run-command.js';
import { smallCampus } from '../../support/cli/small-campus.js';
import { temporaryFolder } from '../../support/cli/temporary-folder.js';
import { unsaidNumbers } from '../../support/explain/said-numbers.js';

const folder = temporaryFolder();
/** Work of each re-solve; the other questions end by themselves within the seconds. */
const WORK: Readonly<Record<string, readonly string[]>> = {
  futures: ['--futures', '50', '--seconds', '10'],
  compare: ['--work', '2', '--seconds', '3'],
};
const USUAL = ['--work', '2', '--seconds', '10'];

/** Choices that are printed: how many a shorter list leaves out is of the list and not of the answer. */
const ALL = 99;

/** A site is promised, and nothing is left to build it with. */
function torn(file: CampusFile): void {
  for (const fund of file.funds.filter(({ kind }) => kind === 'capital' || kind === 'reserve')) {
    Object.assign(fund, { openingBalanceDollars: 0, floorDollars: 0, inflows: [] });
    delete fund.yearlyInflows;
  }
}

interface Told {
  readonly command: string;
  readonly answer: unknown;
  readonly printed: readonly string[];
}

/** The answer as JSON, and what would be printed of it. */
async function asked<Answer>(
  args: readonly string[],
  lines: (answer: Answer) => string[],
): Promise<Told> {
  const [command = ''] = args;
  const { out, notes } = await runCommand(...args, ...(WORK[command] ?? USUAL), '--json');
  if (out === '') throw new Error(`${args.join(' ')}: ${notes}`);
  const answer = JSON.parse(out) as Answer;
  return { command, answer, printed: lines(answer) };
}

const CAMPUSES = [
  ['enough for all', smallCampus(), constructedPlanFile],
  [
    'hours and compost are short',
    shortCampus(),
    (text: string) => planFileOfDecisions(text, shortDecisions),
  ],
] as const;

test.each(CAMPUSES)('%s: no number is told that the JSON has not', async (name, file, planOf) => {
  const campus = await folder.save(`${name}.json`, file);
  const plan = await folder.save(`${name}.plan.json`, planOf(JSON.stringify(file)));
  const richer = structuredClone(file);
  richer.pools[0]!.hours.summer = 650;
  const changed = await folder.save(`${name} richer.json`, richer);
  const answers = [
    await asked(['next-site', campus, plan], nextSiteLines(ALL)),
    await asked(['limits', campus, plan], limitsLines),
    await asked(['promises', campus, plan], promisesLines),
    await asked(['additions', campus, plan], additionsLines),
    await asked(['why', campus, 'S-3', '--plan', plan], whyLines),
    await asked(['futures', campus, plan], futuresLines),
    await asked(['compare', campus, changed], campusesLines),
  ];
  for (const { command, answer, printed } of answers) {
    expect.soft(unsaidNumbers(answer, printed, file), command).toEqual([]);
  }
});

test('two plans side by side: no number is told that the JSON has not', async () => {
  const file = shortCampus();
  const text = JSON.stringify(file);
  const campus = await folder.save('two plans.json', file);
  const later = (of: Campus) => ({
    ...shortDecisions(of),
    placements: shortDecisions(of).placements.map((p) =>
      p.site === 'S-2' ? { ...p, year: fiscalYear(2031) } : p,
    ),
  });
  const a = await folder.save('a.plan.json', planFileOfDecisions(text, shortDecisions));
  const b = await folder.save('b.plan.json', planFileOfDecisions(text, later));
  const { out } = await runCommand('compare', a, b, '--campus', campus, '--json');
  const answer = JSON.parse(out) as PlansCompared;
  expect(answer.moved.map(({ site }) => site)).toEqual(['S-2']);
  expect(unsaidNumbers(answer, plansLines(answer), file)).toEqual([]);
});

test('what cannot be kept, and what each repair costs: no number is told that the JSON has not', async () => {
  const file = smallCampus(torn);
  const campus = await folder.save('torn.json', file);
  const { answer, printed } = await asked<ConflictsAnswer>(['conflicts', campus], conflictsLines);
  expect((answer as ConflictsAnswer).repairs.length).toBeGreaterThan(0);
  expect(unsaidNumbers(answer, printed, file)).toEqual([]);
});

test('a number that an answer has not is caught, in its unit and in its row', () => {
  const rows = [
    { hours: 12, sentence: '12 hours are short.' },
    { dollars: 4000, sentence: '$4,000 in FY31.' },
    { dollars: 12, sentence: '12 hours again.' },
    { share: 0.14, unit: 'share', sentence: '“Bed 7”: 14%, 2nd of 9.' },
  ];
  expect(unsaidNumbers({ rows }, [], { name: 'Bed 7' }).map(([, number]) => number)).toEqual([
    ...['FY31', '12 hours', '2nd', '9'],
  ]);
});
