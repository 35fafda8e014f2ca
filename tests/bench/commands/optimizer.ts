import { accessSync, constants, mkdirSync, writeFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { parseArgs } from 'node:util';
import { counted } from '#units/in-words.js';
import { contest, PEERS, type Contest, type Entry, type PeerName } from '../optimizer/contest.js';
import { FORMULATIONS } from '../optimizer/formulations.js';
import { KeptRuns, ourBuild } from '../optimizer/kept-runs.js';
import { benchPlot } from '../optimizer/plot.js';
import { benchTable } from '../optimizer/table.js';
import { entriesOf, ENTRY_OPTIONS, entryOptions, type EntryOptions } from './entries.js';
import { UsageError } from './shape-options.js';

const OUT = '.out/bench';

/**
 * `npm run bench -- optimizer --sizes 36,120 --kinds tight --seconds 60,120:120 --peers highs,cbc`: generated
 * programs, and campus files given with --campus, solved by ours and by general solvers. Writes a table and
 * a plot. Runs are kept: a bench that was stopped goes on, and one over several parts that were run before
 * only puts them together; `--only-kept` runs nothing.
 */
export async function optimizer(args: readonly string[]): Promise<void> {
  const { mode, peers, formulations, ...options } = optionsOf(args);
  const entries = entriesOf(options, join(OUT, 'programs'));
  const terms = { peers, formulations, kept: new KeptRuns(join(OUT, 'runs'), mode) };
  if (mode === 'run') console.error(mostWork(entries, 1 + peers.length * formulations.length));
  const build = ourBuild();
  const contests: Contest[] = [];
  for (const [i, entry] of entries.entries()) {
    const onStep = (step: string) =>
      console.error(`${i + 1} of ${entries.length}, ${entry.name}: ${step} ...`);
    const held = await contest(entry, { ...terms, build, onStep });
    if (held) contests.push(held);
    // Written after each program, so that a long bench that is stopped has something to show.
    write(contests);
  }
  console.log(benchTable(contests));
  console.log(`Table, plot and numbers are in ${OUT}/optimizer.md, .svg and .json.`);
}

function write(contests: readonly Contest[]): void {
  mkdirSync(OUT, { recursive: true });
  writeFileSync(join(OUT, 'optimizer.md'), benchTable(contests));
  writeFileSync(join(OUT, 'optimizer.svg'), benchPlot(contests));
  writeFileSync(join(OUT, 'optimizer.json'), JSON.stringify(contests, null, 1));
}

function mostWork(entries: readonly Entry[], runs: number): string {
  const minutes = (runs * entries.reduce((sum, { seconds }) => sum + seconds, 0)) / 60;
  const of = counted(entries.length, 'program');
  return `${of}, ${counted(runs, 'run')} each: about ${counted(minutes, 'minute')} at most, less what is kept.`;
}

interface BenchOptions extends EntryOptions {
  readonly peers: readonly PeerName[];
  readonly formulations: readonly string[];
  readonly mode: 'run' | 'only-kept';
}

function optionsOf(args: readonly string[]): BenchOptions {
  const { values } = parseArgs({
    args: [...args],
    options: {
      ...ENTRY_OPTIONS,
      peers: { type: 'string' },
      models: { type: 'string' },
      'only-kept': { type: 'boolean' },
    },
  });
  const defaults = {
    sizes: '20,36,60,120,300',
    years: '30,50',
    kinds: 'loose,tight,knife-edge',
    seconds: '60',
  };
  return {
    ...entryOptions(values, defaults),
    peers: peersOf(values.peers),
    formulations: formulationsOf(values.models),
    mode: values['only-kept'] ? 'only-kept' : 'run',
  };
}

function formulationsOf(text: string | undefined): string[] {
  const known = Object.keys(FORMULATIONS);
  if (text === undefined) return known;
  return text.split(',').map((part) => {
    if (known.includes(part)) return part;
    throw new UsageError(`--models ${part}: there are ${known.join(', ')}.`);
  });
}

/** The peers named; without names, those that this machine has. */
function peersOf(text: string | undefined): PeerName[] {
  if (text === '') return [];
  if (text === undefined) return PEERS.filter(isHere);
  return text.split(',').map((part) => {
    const peer = PEERS.find((known) => known === part);
    if (!peer) throw new UsageError(`--peers ${part}: there are ${PEERS.join(', ')}.`);
    if (!isHere(peer)) throw new UsageError(`--peers ${part}: the command is not on this machine.`);
    return peer;
  });
}

function isHere(peer: PeerName): boolean {
  if (peer === 'highs' || peer === 'glpk.js') return true;
  const folders = (process.env['PATH'] ?? '').split(delimiter).filter((folder) => folder !== '');
  return folders.some((folder) => canRun(join(folder, peer)));
}

function canRun(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
