import { percent, ratio, rows, seconds } from './cells.js';
import { gapOf, secondsToGap } from './judge.js';
import type { OursRun } from './ours.js';

/** One program, solved with one thread and with two for the same time. */
export interface Pair {
  readonly name: string;
  readonly seconds: number;
  readonly one: OursRun;
  readonly two: OursRun;
}

interface Reached {
  readonly pair: Pair;
  readonly gap: number;
  readonly one?: number;
  readonly two?: number;
}

const HEAD = ['program', 'gap', 'one thread, s', 'two threads, s', 'two / one'];
const END_HEAD = ['program', 'limit, s', 'gap with one', 'gap with two', 'plan of two / one'];

/** Seconds to each gap with one thread and with two, their ratios, and where both stood at the end. */
export function threadsTable(pairs: readonly Pair[], gaps: readonly number[]): string {
  const reached = pairs.flatMap((pair) => gaps.map((gap) => reachedBy(pair, gap)));
  return [
    '# One thread and two',
    '',
    'Seconds from the start of each process until plan and bound were within a gap. A dash: not reached.',
    '',
    ...rows(HEAD, reached.map(reachedRow)),
    '',
    middleSaid(reached),
    '',
    ...rows(END_HEAD, pairs.map(endRow)),
    '',
  ].join('\n');
}

function reachedBy(pair: Pair, gap: number): Reached {
  const [one, two] = [secondsToGap(pair.one, gap), secondsToGap(pair.two, gap)];
  return {
    ...{ pair, gap },
    ...(one === undefined ? {} : { one }),
    ...(two === undefined ? {} : { two }),
  };
}

function reachedRow({ pair, gap, one, two }: Reached): string[] {
  return [pair.name, percent(gap), seconds(one), seconds(two), ratio(ratioOf({ one, two }))];
}

function ratioOf({ one, two }: { one?: number | undefined; two?: number | undefined }) {
  return one === undefined || two === undefined ? undefined : two / one;
}

/** The geometric mean, since 0.5 and 2 are to even out; gaps that only one of the two reached are told apart. */
function middleSaid(reached: readonly Reached[]): string {
  const ratios = reached.flatMap((r) => ratioOf(r) ?? []);
  const only = (a: 'one' | 'two', b: 'one' | 'two') =>
    reached.filter((r) => r[a] !== undefined && r[b] === undefined).length;
  const mean = Math.exp(ratios.reduce((sum, r) => sum + Math.log(r), 0) / ratios.length);
  const said = ratios.length === 0 ? 'none reached by both' : `${mean.toFixed(2)} in the mean`;
  return `Two threads over one, ${ratios.length} times to a gap: ${said} (geometric). Gaps that only two threads reached: ${only('two', 'one')}; only one: ${only('one', 'two')}.`;
}

function endRow({ name, seconds: limit, one, two }: Pair): string[] {
  const plans = ratioOf({ one: one.objective, two: two.objective });
  return [
    name,
    String(limit),
    percent(gapOf(one)),
    percent(gapOf(two)),
    plans === undefined ? '-' : plans.toFixed(4),
  ];
}
