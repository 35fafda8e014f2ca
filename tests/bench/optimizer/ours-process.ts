/** Solves a campus file as the command line does, and prints every plan and bound: `node ours-process.js CAMPUS SECONDS`. */
import { readFileSync, writeSync } from 'node:fs';
import { tiersOf } from '#optimizer/tiers/tier-list.js';
import { checkPlanFile } from '#planning/check-plan-file.js';
import { loadCampusFile } from '#planning/load-campus-file.js';
import { solveInThread } from '#solving/solve-in-thread.js';
import type { OursLine } from './ours.js';

const [path = '', seconds = '0'] = process.argv.slice(2);
const tell = (line: OursLine) => writeSync(1, `${JSON.stringify(line)}\n`);
const load = loadCampusFile(readFileSync(path, 'utf8'));
if (!load.ok) throw new Error(`${path} is no sound campus file`);
tell({
  kind: 'tiers',
  tiers: tiersOf(load.campus).map(({ name, tolerance }) => ({ name, tolerance })),
});
const settings = { seed: 1, seconds: Number(seconds) };
const { report, plan } = await solveInThread(load.campus, settings, {
  onPlan: (_, values) => tell({ kind: 'plan', values }),
  onProgress: ({ tier, bound }) => {
    if (tier === 'benefit' && bound !== null) tell({ kind: 'bound', bound });
  },
});
const verified = plan !== undefined && checkPlanFile(load.campus, plan, report).length === 0;
tell({
  kind: 'result',
  ending: report.ending,
  tiers: report.tiers,
  verified,
  sites: plan?.decisions.placements.length ?? 0,
});
