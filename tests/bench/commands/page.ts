import { parseArgs } from 'node:util';
import type { DeskSize } from '../page/measured-desk.js';
import { pageTimes, type ActTimes } from '../page/page-times.js';
import { MOST, numbers, oneNumber } from './shape-options.js';

/**
 * `npm run bench -- page --sites 30,500 --years 30,50 --rounds 9`: what the page costs the main thread
 * of a browser, on campuses from small to large; each as a multiple of the first, beside the goal.
 */
export async function page(args: readonly string[]): Promise<void> {
  const { values } = parseArgs({
    args: [...args],
    options: {
      sites: { type: 'string', default: '30,500' },
      years: { type: 'string', default: '30,50' },
      rounds: { type: 'string', default: '9' },
    },
  });
  const years = numbers('years', values.years, { most: MOST.years });
  const sizes = numbers('sites', values.sites, { most: MOST.sites }).map((sites, place) => {
    return { sites, years: years[place] ?? years.at(-1) ?? 1 };
  });
  const rounds = oneNumber('rounds', values.rounds, { most: 1000 });
  console.log(pageTable(sizes, await pageTimes(sizes, { rounds })));
}

/** A line for each act: milliseconds on each campus, the multiple of the first, and the goal. */
function pageTable(sizes: readonly DeskSize[], times: readonly ActTimes[]): string {
  const heads = sizes.map(({ sites, years }) => `${sites} sites, ${years} years`);
  const rows = times.map(({ name, goalMs, medianMs }) => {
    const [first = Number.NaN] = medianMs;
    const cells = medianMs.map((ms) => `${ms.toFixed(0)} ms (x ${(ms / first).toPrecision(2)})`);
    const isMet = medianMs.every((ms) => ms <= goalMs);
    return [name, ...cells, `${goalMs} ms: ${isMet ? 'met' : 'not met'}`];
  });
  return [['main thread of', ...heads, 'goal'], ...rows]
    .map((cells) =>
      cells
        .map((cell) => cell.padEnd(24))
        .join('')
        .trimEnd(),
    )
    .join('\n');
}
