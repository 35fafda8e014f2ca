import type { PeerRun } from '../peers/outcome.js';
import type { Contest } from './contest.js';
import { gapOf, judge, secondsTo, secondsToGap } from './judge.js';

/** The bench as Markdown: one line for each run, one for each program against what is asked, and growth. */
export function benchTable(contests: readonly Contest[]): string {
  return [
    '# Optimizer bench',
    '',
    'Benefit tier, tiers before it held at what ours reached. Plans and bounds are shares of our plan at',
    'the end; times are seconds from the start of each process. A dash: not told, or not reached.',
    '',
    ...rows(RUN_HEAD, contests.flatMap(runRows)),
    '',
    '## Against the best peer',
    '',
    ...rows(GOAL_HEAD, contests.map(goalRow)),
    '',
    '## Growth',
    '',
    ...rows(GROWTH_HEAD, contests.map(growthRow)),
    '',
  ].join('\n');
}

const RUN_HEAD = [
  'program',
  'solver',
  'model',
  'first plan, s',
  'plan',
  'bound',
  'gap',
  'to 1 % below our plan, s',
  'ended',
  'peak MiB',
];

function runRows({ name, ours, peers }: Contest): string[][] {
  const unit = ours.objective ?? NaN;
  const row = (solver: string, model: string, run: PeerRun) => [
    name,
    solver,
    model,
    seconds(firstPlan(run)),
    share(run.objective, unit),
    share(run.bound, unit),
    percent(gapOf(run)),
    seconds(secondsTo(run, unit * 0.99)),
    run.ended,
    whole(run.peakMiB),
  ];
  const verified = ours.verified ? 'ours, verified' : 'ours, NOT VERIFIED';
  return [
    row(verified, 'own', ours),
    ...peers.map(({ peer, formulation, run }) => row(peer, formulation, run)),
  ];
}

function firstPlan(run: PeerRun & { readonly firstPlan?: number }): number | undefined {
  return run.firstPlan ?? run.moments.find(({ objective }) => objective !== undefined)?.seconds;
}

const GOAL_HEAD = [
  'program',
  'early tiers proven',
  'best peer plan / ours',
  'matched after, s',
  'our gap',
  'best peer gap',
  'gap ratio',
];

function goalRow(contest: Contest): string[] {
  const verdict = judge(contest);
  const { ours } = contest;
  return [
    contest.name,
    ours.earlyProven ? 'yes' : 'no',
    share(verdict.bestPeer, ours.objective ?? NaN),
    seconds(verdict.matchedAfter),
    percent(verdict.ourGap),
    percent(verdict.peerGap),
    verdict.gapRatio === undefined ? '-' : verdict.gapRatio.toFixed(2),
  ];
}

const GROWTH_HEAD = [
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

function rows(head: readonly string[], body: readonly (readonly string[])[]): string[] {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...body.map(line)];
}

const DASH = '-';

function seconds(value: number | undefined): string {
  return value === undefined ? DASH : value.toFixed(1);
}

function share(value: number | undefined, unit: number): string {
  return value === undefined || !Number.isFinite(unit) ? DASH : (value / unit).toFixed(4);
}

function percent(value: number | undefined): string {
  return value === undefined ? DASH : `${(100 * value).toFixed(2)} %`;
}

function whole(value: number | undefined): string {
  return value === undefined ? DASH : Math.round(value).toLocaleString('en-US');
}
