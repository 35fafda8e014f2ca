import type { TierResult } from '#domain/tier.js';
import { percent, rows, seconds } from '../optimizer/cells.js';
import type { OursRun } from '../optimizer/ours.js';

/** A named change, answered at once from the current plan, and solved cold at length. */
export interface Answered {
  readonly name: string;
  readonly quick: OursRun;
  readonly long: OursRun;
}

export interface Judgement {
  /** The first tier before benefit in which the two differ, by more than its tolerance. */
  readonly differsAt?: { readonly tier: string; readonly quick: number; readonly long: number };
  /** Which is the better plan, by the first tier that differs; benefit within 0.01 % is no difference. */
  readonly better: 'quick' | 'long' | 'equal';
  /** By how much the long run's benefit is above the quick one's, as a share of it. */
  readonly benefitShort?: number;
  /** No earlier tier worse, and benefit at most 1 % below where the earlier tiers are equal. */
  readonly within: boolean;
}

/** Benefit this near is equal, and this near is as good as was asked. */
const EQUAL = 1e-4;
const ASKED = 0.01;

/** Compares by tier vector; `undefined` where either has no plan. */
export function judgeAnswer({ quick, long }: Answered): Judgement | undefined {
  if (quick.tiers.length === 0 || long.tiers.length === 0) return undefined;
  const place = long.tiers.findIndex(({ name }) => name === 'benefit');
  const pairs = long.tiers.map((tier, i) => [quick.tiers[i] ?? tier, tier] as const);
  const short = shortOf(pairs[place]);
  const found = pairs.slice(0, place).find(([a, b]) => differs(a, b));
  if (found) {
    const [a, b] = found;
    const better = a.value < b.value ? 'quick' : 'long';
    return {
      differsAt: { tier: b.name, quick: a.value, long: b.value },
      better,
      ...(short === undefined ? {} : { benefitShort: short }),
      within: better === 'quick',
    };
  }
  if (short === undefined) return { better: 'equal', within: true };
  const better = Math.abs(short) <= EQUAL ? 'equal' : short > 0 ? 'long' : 'quick';
  return { better, benefitShort: short, within: short <= ASKED };
}

function differs(a: TierResult, b: TierResult): boolean {
  return Math.abs(a.value - b.value) > b.tolerance + 1e-9;
}

function shortOf(pair: readonly [TierResult, TierResult] | undefined): number | undefined {
  if (!pair) return undefined;
  const [{ value: quick }, { value: long }] = pair;
  return (long - quick) / Math.max(1, Math.abs(long));
}

const HEAD = [
  'change',
  'first earlier tier that differs',
  'better plan',
  'benefit below the long run',
  'within 1 %',
  'answer after, s',
  'long run, s',
  'verified',
];

/** The what-if bench as Markdown. */
export function whatIfTable(answers: readonly Answered[]): string {
  const within = answers.filter((a) => judgeAnswer(a)?.within).length;
  return [
    '# What-if bench',
    '',
    'Each change is answered from the current plan in a short time, and solved cold with a stated limit.',
    'Plans are compared tier by tier; benefit below 0 % means that the quick answer has more.',
    '',
    ...rows(HEAD, answers.map(row)),
    '',
    `As good as the long run, or within 1 % of its benefit: ${within} of ${answers.length}.`,
    '',
    ...rows(TIER_HEAD, answers.flatMap(tierRows)),
    '',
  ].join('\n');
}

function row(answered: Answered): string[] {
  const { name, quick, long } = answered;
  const verdict = judgeAnswer(answered);
  const at = verdict?.differsAt;
  return [
    name,
    at ? `${at.tier}: ${amount(at.quick)}, long run ${amount(at.long)}` : 'none',
    verdict?.better ?? `quick ${quick.ending}, long ${long.ending}`,
    percent(verdict?.benefitShort),
    verdict ? (verdict.within ? 'yes' : 'NO') : '-',
    seconds(quick.seconds),
    seconds(long.seconds),
    quick.verified && long.verified ? 'yes' : 'NO',
  ];
}

const TIER_HEAD = ['change', 'tier', 'at once', 'long run', 'bound of the long run'];

/** The tiers in which either plan is not at its best possible value. */
function tierRows({ name, quick, long }: Answered): string[][] {
  return long.tiers.flatMap((tier, i) => {
    const own = quick.tiers[i]?.value;
    if (own === tier.value && tier.value === tier.bound) return [];
    const bound = tier.bound === null ? '-' : amount(tier.bound);
    return [[name, tier.name, own === undefined ? '-' : amount(own), amount(tier.value), bound]];
  });
}

function amount(value: number): string {
  return String(Math.round(100 * value) / 100);
}
