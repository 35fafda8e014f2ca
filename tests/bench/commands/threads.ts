import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { threadsTable, type Pair } from '../optimizer/threads-table.js';
import { runOurs } from '../optimizer/ours.js';
import { entriesOf, ENTRY_OPTIONS, entryOptions } from './entries.js';
import { UsageError } from './shape-options.js';

const OUT = '.out/bench';

/**
 * `npm run bench -- threads --sizes 36 --kinds tight --seconds 60 --gaps 5,3,2`: the same programs solved by
 * ours with one thread and with two, one after the other, and the times to given gaps as ratios.
 */
export async function threads(args: readonly string[]): Promise<void> {
  const { values } = parseArgs({
    args: [...args],
    options: { ...ENTRY_OPTIONS, gaps: { type: 'string', default: '10,5,3,2,1' } },
  });
  const defaults = { sizes: '20,36', years: '30', kinds: 'loose,tight,knife-edge', seconds: '60' };
  const gaps = values.gaps.split(',').map(percentOf);
  const pairs: Pair[] = [];
  for (const entry of entriesOf(entryOptions(values, defaults), join(OUT, 'programs'))) {
    const { name, path, seconds } = entry;
    console.error(`${name}: one thread, then two ...`);
    const one = await runOurs({ path, seconds, threads: 1 });
    pairs.push({ name, seconds, one, two: await runOurs({ path, seconds, threads: 2 }) });
    mkdirSync(OUT, { recursive: true });
    writeFileSync(join(OUT, 'threads.md'), threadsTable(pairs, gaps));
  }
  console.log(threadsTable(pairs, gaps));
}

function percentOf(text: string): number {
  const value = Number(text);
  if (text.trim() !== '' && value > 0 && value <= 100) return value / 100;
  throw new UsageError(`--gaps ${text}: give percent above 0, separated by commas.`);
}
