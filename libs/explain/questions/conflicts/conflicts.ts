import type { Plan } from '#domain/plan.js';
import type { ConflictMember } from '#domain/tier.js';
import type { ResolveAnswer, ResolveOrder } from '#optimizer/resolve/order.js';
import { counted, listInWords } from '#units/in-words.js';
import type { AskedOfCampus, Made } from '../common/asked.js';
import { conflictsAmong, Oracle, type Conflicts, type Verdict } from './conflict-sets.js';
import type { ConflictsAnswer, ConflictSetRow, RepairRow } from './answer.js';
import { keeping, likelyConflicts, membersOf, type Member } from './members.js';
import { pricedRepairs } from './repairs.js';

/** Most members that a repair lets go. */
const MOST_REMOVED = 3;

/** Rounds of search for a plan, where nobody waits and where time is limited. */
const ROUNDS = 6;
const TIMED_ROUNDS = 50_000;

/** Share of the time left that one test may take, and seconds at the most. */
const TEST_SHARE = 0.4;
const MOST_SECONDS = 10;

/** Share of the time for finding sets and repairs; the rest is for pricing them. */
const FINDING_SHARE = 0.8;

/** Which promises and limits cannot all hold, each set a smallest one, and what lets a plan exist. */
export async function conflicts(asked: AskedOfCampus): Promise<ConflictsAnswer> {
  const { campus, resolver } = asked;
  const all = membersOf(campus);
  const likely = likelyConflicts(all);
  const found = new Map<string, Plan>();
  const oracle = new Oracle<Member>(async (kept) => {
    const { ending, plan } = await planKeeping(asked, all, kept);
    if (plan) found.set(keyOf([...kept]), plan);
    return VERDICTS[ending];
  });
  const whole = await wholeOf(all, oracle, likely);
  const left = resolver.secondsLeft();
  const until = Number.isFinite(left) ? left * (1 - FINDING_SHARE) : 0;
  const goOn = () => resolver.secondsLeft() > until;
  if (whole !== 'impossible') return without(asked, whole);
  asked.onStep?.('Finding what stands against what', 0.2);
  const among = await conflictsAmong(all, oracle, { mostRemoved: MOST_REMOVED, goOn, likely });
  asked.onStep?.('Pricing the repairs', 0.7);
  const planOf = (lets: readonly Member[]) =>
    found.get(keyOf(all.filter((m) => !lets.includes(m))));
  const repairs = await pricedRepairs(asked, { all, repairs: among.repairs, planOf });
  const rows = among.sets.map(setRow);
  return {
    question: 'conflicts',
    headline: headlineOf(rows, repairs),
    sets: rows,
    repairs,
    mostRemoved: MOST_REMOVED,
    complete: among.complete,
    made: made(asked, among, repairs),
  };
}

const keyOf = (members: readonly Member[]): string =>
  members
    .map(({ kind, id }) => `${kind} ${id}`)
    .sort()
    .join('; ');

/** Whether everything can hold: what is impossible in part is so in whole, and parts are sooner judged. */
async function wholeOf(
  all: readonly Member[],
  oracle: Oracle<Member>,
  likely: readonly ReadonlySet<Member>[],
): Promise<Verdict> {
  const whole = new Set(all);
  await Promise.all(likely.map((kept) => oracle.ask(kept)));
  return oracle.ask(whole);
}

async function planKeeping(
  { campus, resolver, seed }: AskedOfCampus,
  all: readonly Member[],
  kept: ReadonlySet<Member>,
): Promise<Pick<ResolveAnswer, 'ending' | 'plan'>> {
  const left = resolver.secondsLeft();
  const order: ResolveOrder = {
    campus: keeping(campus, all, kept),
    seed,
    effort: { kind: 'rounds', rounds: Number.isFinite(left) ? TIMED_ROUNDS : ROUNDS },
    ...(Number.isFinite(left)
      ? { seconds: Math.min(MOST_SECONDS, Math.max(1, left * TEST_SHARE)) }
      : {}),
    wish: 'exists',
  };
  const [answer] = await resolver.resolve([order]);
  return answer ?? { ending: 'not-found' };
}

const VERDICTS: Readonly<Record<ResolveAnswer['ending'], Verdict>> = {
  found: 'possible',
  impossible: 'impossible',
  'not-found': 'unknown',
};

function without(asked: AskedOfCampus, whole: Verdict): ConflictsAnswer {
  const headline =
    whole === 'possible'
      ? 'Nothing binding stands against anything else: a verified plan keeps every binding promise within every limit.'
      : 'No plan was found, and it was not proven that there is none: more time may tell.';
  return {
    ...{ question: 'conflicts', headline, sets: [], repairs: [], mostRemoved: MOST_REMOVED },
    complete: whole === 'possible',
    made: made(asked, { sets: [], repairs: [], complete: true }, []),
  };
}

const bare = ({ kind, id, name }: ConflictMember): ConflictMember => ({ kind, id, name });

function setRow({ members, necessary }: Conflicts<Member>['sets'][number]): ConflictSetRow {
  const names = members.map(inWords);
  const unproven = members.filter((m) => !necessary.includes(m)).map(inWords);
  const proof =
    unproven.length === 0
      ? members.length === 1
        ? 'Without it a verified plan was found.'
        : 'Dropping any one of them works: a verified plan was found without each.'
      : `${shown(necessary)}Whether one exists without ${listInWords(unproven)} was not decided.`;
  return {
    members: members.map(bare),
    provenNecessary: necessary.map((m) => m.id),
    sentence: `${members.length === 1 ? 'This cannot be kept' : 'These cannot all be kept'} (proven): ${listInWords(names)}. ${proof}`,
  };
}

function shown(necessary: readonly Member[]): string {
  if (necessary.length === 0) return '';
  const each = necessary.length > 1 ? 'each of these: ' : '';
  return `A verified plan was found without ${each}${listInWords(necessary.map(inWords))}. `;
}

/** `“One site a year”`, `the years that Plan 2027 froze`, `the limit on money in the funds`. */
function inWords({ kind, id, name }: ConflictMember): string {
  if (id === 'frozen-years') return `the ${name}`;
  return kind === 'commitment' ? `“${name}”` : `the limit on ${name}`;
}

function headlineOf(sets: readonly ConflictSetRow[], repairs: readonly RepairRow[]): string {
  const [cheapest] = repairs;
  const many =
    sets.length === 0
      ? 'this is proven of all promises and limits together; which of them stand against each other was not worked out in the time'
      : `${counted(sets.length, 'set', 'sets')} of promises and limits cannot all hold`;
  const repair = cheapest ? ` ${cheapest.sentence}` : '';
  return `No plan is possible: ${many}.${repair}`;
}

function made(
  { seed }: AskedOfCampus,
  found: Pick<Conflicts<Member>, 'complete' | 'sets' | 'repairs'>,
  repairs: readonly RepairRow[],
): Made {
  const unpriced = repairs.filter((r) => r.prices === null).length;
  return {
    rounds: null,
    seeds: [seed],
    skipped: [
      ...(found.complete
        ? []
        : ['further sets and repairs, where a test was not decided or not reached']),
      ...(unpriced > 0 ? [`the price of ${counted(unpriced, 'repair')}`] : []),
    ],
    sentence:
      'A set is called impossible only where that is proven, and a repair only where a verified plan was found; prices are those of the plan found, and a better one might give up less.',
  };
}
