import type { Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import { fiscalYear, fiscalYearLabel } from '#units/fiscal-year.js';
import { counted, wholeInWords } from '#units/in-words.js';
import type { FutureRunner, Policy } from './order.js';
import type { FuturesAnswer, FuturesResult } from './results/answer.js';
import { pairedResult } from './results/pair.js';
import { summarize } from './results/summarize.js';
import { aboutShare } from '#units/sampled-in-words.js';
import { NO_CHANCE, oddsOf } from './sampling/odds.js';
import { sampleWorld } from './sampling/world.js';
import type { Outcome } from './stress/outcome.js';
import { runFuture } from './stress/run-future.js';
import { settingOf } from './stress/setting.js';

/** What is asked: how a plan fares in so many futures. */
export interface FuturesAsk {
  readonly campus: Campus;
  readonly plan: Plan;
  readonly seed: number;
  /** Futures that the fixed plan meets. */
  readonly futures: number;
  /** Futures, at most, that the plan meets again and is made anew in each year. */
  readonly mended: number;
  readonly runner: FutureRunner;
  readonly onStep: (step: string, share: number) => void;
}

/** Futures of one order: few, so that progress shows and little is lost when time is over. */
const AT_ONCE: Readonly<Record<Policy, number>> = { keep: 50, replan: 5 };

export const FIXED_RECOURSE =
  'The plan is kept as it is. Where hours are lacking, care goes undone: other care first, then harvest, then food beds. A build that cannot be prepared or paid for is skipped, in the order of the plan, and not made up for. A position that cannot be paid gives no hours that year. Care left undone lets weeds in, which set the ground back in age.';

export const MENDED_RECOURSE =
  'Each year, before anything is prepared, the rest of the plan is worked out again with the money that is left, the prices of that year, the ground that works hold, and the care that weeds have added. What no longer holds is repaired: another site, a cheaper type, or a later year, and a position asked for in time where hours would be lacking. It is a repair of limited work and not the full search, so that a committee with more time could do better. What happens within the year is met as above.';

/** Meets the futures and says how the plan fares. */
export async function futures(ask: FuturesAsk): Promise<FuturesAnswer> {
  const { campus, plan, seed } = ask;
  const { odds, sources } = oddsOf(campus);
  const again = Math.min(ask.mended, ask.futures);
  // Begun in this order: how the plan itself fares is asked first.
  const [kept, made] = await Promise.all([
    meetAll(ask, { policy: 'keep', from: 0, to: ask.futures }),
    meetAll(ask, { policy: 'replan', from: 0, to: again }),
  ]);
  const setting = settingOf({ campus, plan, policy: 'keep' }, odds);
  const met = { setting, asPlanned: asPlanned(campus, plan) };
  const fixed = summarize({
    ...met,
    ...{ outcomes: kept, asked: ask.futures, recourse: FIXED_RECOURSE },
  });
  const mended = summarize({ ...met, outcomes: made, asked: again, recourse: MENDED_RECOURSE });
  return {
    ...{ seed, headline: headline(campus, fixed), fixed, odds: sources, held: heldOf(campus) },
    mended: made.length > 0 ? mended : null,
    paired: pairedResult(campus, kept, made),
    leftOut: [
      ...missing(ask.futures - kept.length, ask.futures, 'with the plan kept as it is'),
      ...missing(again - made.length, again, 'with the plan made anew each year'),
    ],
  };
}

function missing(count: number, of: number, how: string): string[] {
  if (count === 0) return [];
  return [`${counted(count, 'future')} of ${wholeInWords(of)} ${how}, for want of time.`];
}

/** The plan with nothing left to chance: what futures are compared with. */
export function asPlanned(campus: Campus, plan: Plan): Outcome {
  const works = campus.construction.map((c) => ({ ...c, certaintyPercent: 100 }));
  const sure = { ...campus, construction: works };
  const world = sampleWorld(sure, NO_CHANCE, { seed: 0, future: 0 });
  return runFuture(settingOf({ campus, plan, policy: 'keep' }, NO_CHANCE), world, 0);
}

interface Span {
  readonly policy: Policy;
  readonly from: number;
  readonly to: number;
}

async function meetAll(
  { campus, plan, seed, runner, onStep }: FuturesAsk,
  { policy, from: start, to: end }: Span,
): Promise<Outcome[]> {
  const count = end - start;
  let done = 0;
  const some = AT_ONCE[policy];
  const starts = Array.from({ length: Math.ceil(count / some) }, (_, i) => start + i * some);
  const parts = await Promise.all(
    starts.map(async (from) => {
      const to = Math.min(end, from + some);
      const part = await runner.run({ campus, plan, seed, policy, from, to });
      done += to - from;
      onStep(`futures met: ${done} of ${count}`, done / count);
      return part ?? [];
    }),
  );
  return parts.flat();
}

/** The public yearly promise, or the first promise there is, and the first season likely short. */
function headline(campus: Campus, { promises, firstShort, futures: met }: FuturesResult): string {
  const yearly = campus.commitments.findIndex((c) => c.public && c.test.kind === 'sites-each-year');
  const promise = promises[Math.max(0, yearly)];
  const turning = promise?.keptThrough.filter((k) => k.share > 0.5).at(-1);
  const kept = promise
    ? turning
      ? `“${promise.name}” is more likely than not kept through ${fiscalYearLabel(fiscalYear(turning.year))}, ${aboutShare(turning, met)} of futures. `
      : `“${promise.name}” is more likely than not broken in the first year. `
    : '';
  const short = firstShort
    ? `The first season more likely than not short of care is ${firstShort.label}.`
    : 'No season is more likely than not short of care.';
  return kept + short;
}

/** What does not vary, by what the campus has. */
function heldOf(campus: Campus): string[] {
  const pools = campus.pools.filter((p) => p.kind !== 'staff').map((p) => p.name);
  const uncounted = campus.funds.filter((f) => !f.counted).map((f) => f.name);
  return [
    ...(pools.length > 0
      ? [`Hours of ${pools.join('; ')}: the file does not say how they vary from year to year.`]
      : []),
    ...(uncounted.length > 0
      ? [`Money that is hoped for and not counted never comes: ${uncounted.join('; ')}.`]
      : []),
    'Allotments grow as the file says, also where prices grow faster.',
    'Care, yield, and gates are as planned; a gate that is thought to pass does.',
  ];
}
