/**
 * Solves a campus file as the command line does, and prints every plan and bound:
 * `node ours-process.js TASK`, an `OursTask` as JSON. At its end every plan that was told is checked anew.
 */
import { appendFileSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Campus } from '#domain/campus.js';
import type { Decisions, Plan } from '#domain/plan.js';
import { prepareThreads } from '#solving/ready-threads.js';
import { printLine } from '../print-line.js';
import type { OursLine, OursTask } from './ours.js';

prepareThreads();
const { tiersOf } = await import('#optimizer/tiers/tier-list.js');
const { checkPlanFile } = await import('#planning/check-plan-file.js');
const { loadCampusFile } = await import('#planning/load-campus-file.js');
const { checkPlan } = await import('#rules/check-plan.js');
const { solveInThread } = await import('#solving/solve-in-thread.js');

const { path, start, after, ...settings } = JSON.parse(process.argv[2] ?? '{}') as OursTask;
const tell: (line: OursLine) => void = printLine;
if (after) {
  await solveInThread(campusIn(after.path), { seed: 1, seconds: after.seconds });
  tell({ kind: 'begin' });
}
const folder = mkdtempSync(join(tmpdir(), 'bench-plans-'));
try {
  await solve(campusIn(path), join(folder, 'plans'));
} finally {
  rmSync(folder, { recursive: true });
}

function campusIn(file: string): Campus {
  const load = loadCampusFile(readFileSync(file, 'utf8'));
  if (!load.ok) throw new Error(`${file} is no sound campus file`);
  return load.campus;
}

/** Plans are kept in a file while it solves, so that they do not count as its memory. */
async function solve(campus: Campus, plans: string): Promise<void> {
  tell({
    kind: 'tiers',
    tiers: tiersOf(campus).map(({ name, tolerance }) => ({ name, tolerance })),
  });
  const { report, plan } = await solveInThread(
    campus,
    { seed: 1, ...settings },
    {
      ...(start ? { start: JSON.parse(readFileSync(start, 'utf8')) as Decisions } : {}),
      onPlan: (found, values) => {
        tell({ kind: 'plan', values });
        appendFileSync(plans, `${JSON.stringify(found)}\n`);
      },
      onProgress: ({ tier, bound }) => {
        if (tier === 'benefit' && bound !== null) tell({ kind: 'bound', bound });
      },
    },
  );
  tell({
    kind: 'result',
    ending: report.ending,
    tiers: report.tiers,
    peakMiB: process.resourceUsage().maxRSS / 1024,
    ...(plan ? { decisions: plan.decisions } : {}),
  });
  if (!plan) return;
  const told = readFileSync(plans, 'utf8').trimEnd().split('\n');
  const sound = told.filter((line) => checkPlan(campus, JSON.parse(line) as Plan).length === 0);
  const last = checkPlanFile(campus, plan, report).length === 0;
  tell({ kind: 'checked', told: told.length, sound: sound.length, last });
}
