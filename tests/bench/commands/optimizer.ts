import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { accessSync, constants } from 'node:fs';
import { basename } from 'node:path';
import { parseArgs } from 'node:util';
import { loadCampusFile } from '#planning/load-campus-file.js';
import { contest, PEERS, type Contest, type Entry, type PeerName } from '../optimizer/contest.js';
import { benchPlot } from '../optimizer/plot.js';
import { benchTable } from '../optimizer/table.js';
import { generatedFile, nameOf } from '../programs/generated-program.js';
import type { ProgramShape } from '../programs/shape.js';
import { kinds, MOST, numbers, oneNumber, UsageError } from './shape-options.js';

const OUT = '.out/bench';

/**
 * `npm run bench -- optimizer --sizes 36 --kinds tight --seconds 20 --peers highs,cbc`: generated programs, and
 * campus files given with --campus, solved by ours and by general solvers. Writes a table and a plot.
 */
export async function optimizer(args: readonly string[]): Promise<void> {
  const options = optionsOf(args);
  mkdirSync(join(OUT, 'programs'), { recursive: true });
  const contests: Contest[] = [];
  for (const entry of entriesOf(options)) {
    const onStep = (step: string) => console.error(`${entry.name}: ${step} ...`);
    contests.push(await contest(entry, { ...options, onStep }));
    // Written after each program, so that a long bench that is stopped has something to show.
    writeFileSync(join(OUT, 'optimizer.md'), benchTable(contests));
    writeFileSync(join(OUT, 'optimizer.svg'), benchPlot(contests));
    writeFileSync(join(OUT, 'optimizer.json'), JSON.stringify(contests, mapsAsObjects, 1));
  }
  console.log(benchTable(contests));
  console.log(`Table, plot and numbers are in ${OUT}/optimizer.md, .svg and .json.`);
}

interface BenchOptions {
  readonly sizes: readonly number[];
  readonly years: readonly number[];
  readonly kinds: readonly ProgramShape['kind'][];
  readonly seeds: readonly number[];
  readonly types?: number;
  readonly seconds: number;
  readonly peers: readonly PeerName[];
  readonly files: readonly string[];
}

function optionsOf(args: readonly string[]): BenchOptions {
  const { values } = parseArgs({
    args: [...args],
    options: {
      sizes: { type: 'string' },
      years: { type: 'string', default: '30' },
      kinds: { type: 'string', default: 'loose,tight,knife-edge' },
      seeds: { type: 'string', default: '1' },
      types: { type: 'string' },
      seconds: { type: 'string', default: '60' },
      peers: { type: 'string' },
      campus: { type: 'string', multiple: true, default: [] },
    },
  });
  const files = values.campus;
  // Where only campus files are named, nothing is generated.
  const sizes = values.sizes ?? (files.length > 0 ? '' : '20,36,60,120,300');
  return {
    sizes: sizes === '' ? [] : numbers('sizes', sizes, { most: MOST.sites }),
    years: numbers('years', values.years, { most: MOST.years }),
    kinds: kinds(values.kinds),
    seeds: numbers('seeds', values.seeds, { most: MOST.seed }),
    ...(values.types === undefined
      ? {}
      : { types: oneNumber('types', values.types, { most: MOST.types }) }),
    seconds: oneNumber('seconds', values.seconds, { most: 3600 }),
    peers: peersOf(values.peers),
    files,
  };
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

function* entriesOf(options: BenchOptions): Generator<Entry> {
  for (const file of options.files) yield entryOf(basename(file, '.json'), file);
  for (const sites of options.sizes) {
    for (const years of options.years) {
      for (const kind of options.kinds) {
        for (const seed of options.seeds) {
          const { types } = options;
          const shape = { sites, years, kind, seed, ...(types === undefined ? {} : { types }) };
          const path = join(OUT, 'programs', `${nameOf(shape)}.json`);
          writeFileSync(path, JSON.stringify(generatedFile(shape)));
          yield entryOf(nameOf(shape), path);
        }
      }
    }
  }
}

function entryOf(name: string, path: string): Entry {
  const load = loadCampusFile(readFileSync(path, 'utf8'));
  if (!load.ok) throw new UsageError(`--campus ${path}: it cannot be used; check it first.`);
  const { campus } = load;
  const { horizonYears } = campus.calendar;
  return { name, path, campus, sites: campus.candidates.length, years: horizonYears };
}

function mapsAsObjects(_: string, value: unknown): unknown {
  return value instanceof Map ? (Object.fromEntries(value) as unknown) : value;
}
