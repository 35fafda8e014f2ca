import { percent, rows, seconds, whole } from './cells.js';
import type { Contest } from './contest.js';
import { gapOf, secondsToGap } from './judge.js';

const HEAD = [
  'program',
  'sites x years',
  'rows',
  'columns',
  'terms',
  'first plan, s',
  'gap 3 %, s',
  'gap 1 %, s',
  'gap at the end',
  'peak MiB',
];

/** How long ours takes and how much memory as programs grow, and the power of the sites it goes by. */
export function growthTable(contests: readonly Contest[]): string[] {
  const powers = powerRows(contests);
  return [
    ...rows(HEAD, contests.map(growthRow)),
    ...(powers.length === 0 ? [] : ['', ...POWERS_SAID, '', ...rows(POWER_HEAD, powers)]),
  ];
}

function growthRow({ name, sites, years, ours, sizes }: Contest): string[] {
  const { plain } = sizes;
  return [
    name,
    `${sites} x ${years}`,
    whole(plain?.rows),
    whole(plain?.columns),
    whole(plain?.terms),
    seconds(ours.firstPlan),
    seconds(secondsToGap(ours, 0.03)),
    seconds(secondsToGap(ours, 0.01)),
    percent(gapOf(ours)),
    whole(ours.peakMiB),
  ];
}

const POWERS_SAID = [
  'Power of the number of sites by which each grows, by least squares over the programs of a family; 1 is',
  'in step with the sites, 2 their square.',
];
const POWER_HEAD = ['family', 'sites', 'terms', 'first plan', 'gap 3 %', 'peak memory'];

function powerRows(contests: readonly Contest[]): string[][] {
  const families = [...new Set(contests.flatMap(({ family }) => family ?? []))];
  return families.flatMap((family) => {
    const own = contests.filter((c) => c.family === family);
    const sizes = [...new Set(own.map(({ sites }) => sites))].sort((a, b) => a - b);
    if (sizes.length < 3) return [];
    const power = (measure: (c: Contest) => number | undefined) => powerOf(own, measure);
    return [
      [
        family,
        `${sizes[0]} to ${sizes.at(-1)}`,
        power(({ sizes: { plain } }) => plain?.terms),
        power(({ ours }) => ours.firstPlan),
        power(({ ours }) => secondsToGap(ours, 0.03)),
        power(({ ours }) => ours.peakMiB),
      ],
    ];
  });
}

/** Slope of log(measure) over log(sites); a dash where fewer than three programs tell it. */
function powerOf(
  contests: readonly Contest[],
  measure: (contest: Contest) => number | undefined,
): string {
  const points = contests.flatMap((c) => {
    const value = measure(c);
    return value === undefined || value <= 0 ? [] : [{ x: Math.log(c.sites), y: Math.log(value) }];
  });
  if (new Set(points.map(({ x }) => x)).size < 3) return '-';
  const mean = (of: (p: { x: number; y: number }) => number) =>
    points.reduce((sum, p) => sum + of(p), 0) / points.length;
  const [x, y] = [mean((p) => p.x), mean((p) => p.y)];
  const slope = mean((p) => (p.x - x) * (p.y - y)) / mean((p) => (p.x - x) ** 2);
  return slope.toFixed(1);
}
