/** `npm run bench` measures every bench, `npm run bench -- NAME ...` the named ones. */
import { parseArgs } from 'node:util';
import type { Bench, Timing } from './bench.js';
import { FULL, measure } from './measure.js';
import { BENCHES } from './registry.js';

const { positionals: names } = parseArgs({ allowPositionals: true });
const unknown = names.filter((name) => !BENCHES.some((bench) => bench.name === name));
if (unknown.length > 0) {
  const known = BENCHES.map(({ name }) => name).join(', ');
  console.error(`No bench is called ${unknown.join(', ')}. There are: ${known}.`);
  process.exitCode = 2;
} else {
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
