/**
 * `npm run bench` measures every timed bench, `npm run bench -- NAME ...` the named ones; a command
 * comes first and takes what follows it: `npm run bench -- generate --out FILE`.
 */
import type { Bench, Timing } from './bench.js';
import { generate } from './commands/generate.js';
import { optimizer } from './commands/optimizer.js';
import { page } from './commands/page.js';
import { UsageError } from './commands/shape-options.js';
import { threads } from './commands/threads.js';
import { whatIf } from './commands/what-if.js';
import { FULL, measure } from './measure.js';
import { BENCHES } from './registry.js';

type Command = (args: readonly string[]) => void | Promise<void>;

/** What is not timed run against run, and so has options and a report of its own. */
const COMMANDS: Readonly<Record<string, Command>> = {
  generate,
  optimizer,
  page,
  threads,
  'what-if': whatIf,
};

const [first = '', ...rest] = process.argv.slice(2);
try {
  await (COMMANDS[first] ?? measureNamed)(first in COMMANDS ? rest : process.argv.slice(2));
} catch (error) {
  const code = (error as { code?: string }).code ?? '';
  if (!(error instanceof UsageError) && !code.startsWith('ERR_PARSE_ARGS')) throw error;
  console.error((error as Error).message);
  process.exitCode = 2;
}

async function measureNamed(names: readonly string[]): Promise<void> {
  const unknown = names.filter((name) => !BENCHES.some((bench) => bench.name === name));
  if (unknown.length > 0) {
    const known = [...BENCHES.map(({ name }) => name), ...Object.keys(COMMANDS)].join(', ');
    throw new UsageError(`No bench is called ${unknown.join(', ')}. There are: ${known}.`);
  }
  const chosen = BENCHES.filter(({ name }) => names.length === 0 || names.includes(name));
  for (const bench of chosen) await show(bench);
}

async function show(bench: Bench): Promise<void> {
  console.log(`\n${bench.name}: ${bench.about}`);
  for (const size of bench.sizes) {
    const cells = (await measure(bench, size, FULL)).map(cell);
    console.log(`  ${`${size} ${bench.sizeUnit}`.padEnd(16)}${cells.join('   ')}`);
  }
}

function cell({ contender, medianMs, ratio }: Timing): string {
  return `${contender} ${medianMs.toPrecision(3)} ms (x ${ratio.toPrecision(3)})`;
}
