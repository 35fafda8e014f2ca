import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import type { CampusFile } from '#contracts/campus-file.schema.js';
import { loadCampusFile } from '#planning/load-campus-file.js';
import { fingerprint, KeptRuns, ourBuild } from '../optimizer/kept-runs.js';
import { runOurs, type OursRun, type OursTask } from '../optimizer/ours.js';
import { namedChanges } from '../what-if/changes.js';
import { whatIfTable, type Answered } from '../what-if/compare.js';
import { numbers, oneNumber, UsageError } from './shape-options.js';

const OUT = '.out/bench';
const MOST = { seconds: 3600, work: 1_000_000, change: 100 };

/**
 * `npm run bench -- what-if --campus FILE --seconds 3 --work 1000`: named changes of a campus, each answered
 * from its current plan in so many seconds and set against the changed campus solved cold with so much
 * work, or with --long for so many seconds. With `--after 10` the process that answers has solved the campus for
 * so many seconds before, as a server has; left out, it starts cold. `--changes 1,4` takes some of them. Long
 * runs are kept until our solver is built otherwise, or under any build with `--keep`, which names them.
 */
export async function whatIf(args: readonly string[]): Promise<void> {
  const options = optionsOf(args);
  mkdirSync(join(OUT, 'what-if'), { recursive: true });
  const kept = new KeptRuns(join(OUT, 'runs'), 'run');
  const long = (path: string) => longRun(kept, path, options);
  const file = JSON.parse(readFileSync(options.campus, 'utf8')) as CampusFile;
  const { decisions } = await long(options.campus);
  if (!decisions) throw new UsageError(`--campus ${options.campus}: no plan was found for it.`);
  const start = join(OUT, 'what-if', 'current.json');
  writeFileSync(start, JSON.stringify(decisions));
  const answers: Answered[] = [];
  for (const [i, change] of namedChanges({ file, decisions }).entries()) {
    if (!options.changes(i + 1)) continue;
    const path = join(OUT, 'what-if', `change-${i + 1}.json`);
    writeFileSync(path, JSON.stringify(change.file));
    ensureSound(path, change.name);
    const { seconds } = options;
    answers.push({
      name: `${i + 1}. ${change.name}`,
      long: await long(path),
      quick: await runOurs({ path, start, seconds, ...afterOf(options) }),
    });
    writeFileSync(join(OUT, 'what-if.md'), whatIfTable(answers));
  }
  console.log(whatIfTable(answers));
  console.log(`Answers after ${options.seconds} s; long runs with ${said(options.limit)}.`);
}

/** What ends a long run: work makes it repeatable, time lets it use two threads. */
type LongLimit = { readonly work: number } | { readonly seconds: number };

function said(limit: LongLimit): string {
  return 'work' in limit ? `--work ${limit.work}` : `${limit.seconds} s`;
}

interface WhatIfOptions {
  readonly campus: string;
  readonly seconds: number;
  readonly limit: LongLimit;
  readonly keep: string;
  readonly changes: (place: number) => boolean;
  readonly after: number | undefined;
}

function afterOf({ campus, after }: WhatIfOptions): Pick<OursTask, 'after'> {
  return after === undefined ? {} : { after: { path: campus, seconds: after } };
}

function optionsOf(args: readonly string[]): WhatIfOptions {
  const { values } = parseArgs({
    args: [...args],
    options: {
      campus: { type: 'string', default: 'seeds/demo-strained.json' },
      seconds: { type: 'string', default: '3' },
      work: { type: 'string', default: '1000' },
      long: { type: 'string' },
      changes: { type: 'string' },
      keep: { type: 'string' },
      after: { type: 'string' },
    },
  });
  const chosen =
    values.changes === undefined
      ? undefined
      : numbers('changes', values.changes, { most: MOST.change });
  return {
    campus: values.campus,
    seconds: oneNumber('seconds', values.seconds, { most: MOST.seconds }),
    limit:
      values.long === undefined
        ? { work: oneNumber('work', values.work, { most: MOST.work }) }
        : { seconds: oneNumber('long', values.long, { most: MOST.seconds }) },
    keep: values.keep === undefined ? ourBuild() : fingerprint(values.keep),
    after:
      values.after === undefined
        ? undefined
        : oneNumber('after', values.after, { most: MOST.seconds }),
    changes: (place) => chosen?.includes(place) ?? true,
  };
}

async function longRun(
  kept: KeptRuns,
  path: string,
  { limit, keep }: WhatIfOptions,
): Promise<OursRun> {
  const of = fingerprint(readFileSync(path, 'utf8'));
  const run = await kept.get(`what-if-${of}-${keep}-${said(limit).replace(/\W/g, '')}`, () => {
    console.error(`${path}: cold, with ${said(limit)} ...`);
    return runOurs({ path, ...limit });
  });
  if (!run) throw new Error(`no run of ${path}`);
  return run;
}

function ensureSound(path: string, name: string): void {
  const load = loadCampusFile(readFileSync(path, 'utf8'));
  if (load.ok) return;
  const [first] = load.problems.filter((p) => p.severity === 'error');
  throw new Error(`${name}: ${first?.record} ${first?.problem}`);
}
