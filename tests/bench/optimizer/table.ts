import { counted } from '#units/in-words.js';
import type { PeerRun } from '../peers/outcome.js';
import { percent, ratio, rows, seconds, share, whole } from './cells.js';
import type { Contest } from './contest.js';
import { growthTable } from './growth.js';
import { gapOf, isHalved, isMatched, judge, secondsTo, type Verdict } from './judge.js';

/** The bench as Markdown: one line for each run, one for each program against what is asked, and growth. */
export function benchTable(contests: readonly Contest[]): string {
  return [
    '# Optimizer bench',
    '',
    'Benefit tier, tiers before it held at what ours reached. Plans and bounds are shares of our plan at',
    'the end; times are seconds from the start of each process. A dash: not told, or not reached.',
    'Models: `plain` has the rules and nothing else; `tightened` is as our proof asks it, with counts, their',
    'limits, and without lives that no better plan can have. "Best peer plan" is the best that any peer had on any model at the end of its time; a plan',
    'within 0.01 % of it counts as equal. Verified: plans told by ours that pass every check anew.',
    '',
    ...rows(RUN_HEAD, contests.flatMap(runRows)),
    '',
    '## Against the best peer',
    '',
    ...goalTable(contests),
    '',
    '## Growth',
    '',
    ...growthTable(contests),
    '',
  ].join('\n');
}

const RUN_HEAD = [
  'program',
  'limit, s',
  'solver',
  'model',
  'first plan, s',
  'to best peer plan, s',
  'plan',
  'bound',
  'gap',
  'ended',
  'peak MiB',
  'verified',
];

function runRows(contest: Contest): string[][] {
  const { ours, peers } = contest;
  const unit = ours.objective ?? NaN;
  const best = bestPlan(contest);
  const row = (solver: string, model: string, run: PeerRun) => [
    contest.name,
    String(contest.seconds),
    solver,
    model,
    seconds(firstPlan(run)),
    seconds(best === undefined ? undefined : secondsTo(run, best)),
    share(run.objective, unit),
    share(run.bound, unit),
    percent(gapOf(run)),
    run.ended,
    whole(run.peakMiB),
  ];
  return [
    [...row('ours', 'own', ours), verified(contest)],
    ...peers.map(({ peer, formulation, run }) => [...row(peer, formulation, run), '-']),
  ];
}

function verified({ ours: { plans, verified: all } }: Contest): string {
  if (plans.told === 0) return 'no plan';
  return all ? `yes, ${plans.sound} of ${plans.told}` : `NO, ${plans.sound} of ${plans.told}`;
}

function bestPlan({ peers }: Contest): number | undefined {
  const plans = peers.flatMap(({ run }) => run.objective ?? []);
  return plans.length > 0 ? Math.max(...plans) : undefined;
}

function firstPlan(run: PeerRun & { readonly firstPlan?: number }): number | undefined {
  return run.firstPlan ?? run.moments.find(({ objective }) => objective !== undefined)?.seconds;
}

const GOAL_HEAD = [
  'program',
  'peers on',
  'early tiers proven',
  'best peer plan / ours',
  'matched after, s',
  'our gap',
  'best peer gap',
  'gap ratio',
  'in a tenth of the time',
  'half the gap',
];

interface Judged {
  readonly contest: Contest;
  readonly model: string;
  readonly verdict: Verdict;
}

function goalTable(contests: readonly Contest[]): string[] {
  const judged = contests.flatMap((contest) =>
    formulationsOf(contest).map((model) => ({ contest, model, verdict: judge(contest, model) })),
  );
  const models = [...new Set(judged.map(({ model }) => model))];
  return [
    ...rows(GOAL_HEAD, judged.map(goalRow)),
    '',
    ...models.map((model) =>
      summary(
        model,
        judged.filter((j) => j.model === model),
      ),
    ),
  ];
}

function formulationsOf({ peers }: Contest): string[] {
  return [...new Set(peers.map(({ formulation }) => formulation))];
}

function goalRow({ contest, model, verdict }: Judged): string[] {
  const { ours } = contest;
  return [
    contest.name,
    model,
    ours.objective === undefined ? '-' : ours.earlyProven ? 'yes' : 'no',
    share(verdict.bestPeer, ours.objective ?? NaN),
    seconds(verdict.matchedAfter),
    percent(verdict.ourGap),
    percent(verdict.peerGap),
    ratio(verdict.gapRatio),
    isMatched(verdict, contest.seconds) ? 'yes' : 'no',
    isHalved(verdict) ? 'yes' : 'no',
  ];
}

function summary(model: string, judged: readonly Judged[]): string {
  const of = counted(judged.length, 'program', 'programs');
  const matched = judged.filter(({ contest, verdict }) => isMatched(verdict, contest.seconds));
  const halved = judged.filter(({ verdict }) => isHalved(verdict));
  return `- Peers on the ${model} model: their best plan had in a tenth of the time on ${matched.length} of ${of}, half their gap on ${halved.length}.`;
}
