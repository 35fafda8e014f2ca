import { counted } from '../problem-lines.js';
import { dollars } from './amounts.js';
import {
  moreInWords,
  ofFutures,
  quantileInWords,
  quantilesInWords,
  shareInWords,
  type FuturesAnswer,
} from '#planning/answer-futures.js';

type Result = FuturesAnswer['fixed'];
type Season = Result['seasons'][number];
type Spread = Season['wanted'];
type Paired = NonNullable<FuturesAnswer['paired']>;
type Promised = Result['promises'][number];

const whole = new Intl.NumberFormat('en-US', { maximumFractionDigits: 0 });

/** Years between two summers that are printed, and years that are printed of one promise at the most. */
const EVERY = 5;
const MOST_YEARS = 6;

/** How a plan fares in sampled futures. */
export function futuresLines(answer: FuturesAnswer): string[] {
  const { fixed, mended, headline, held, leftOut, odds, seed } = answer;
  return [
    headline,
    '',
    `The plan as it stands, in ${whole.format(fixed.futures)} sampled futures. ${fixed.recourse}`,
    '',
    ...promisesLines(fixed),
    '',
    ...shortLines(fixed),
    '',
    ...seasonLines(fixed),
    '',
    ...giftLines(fixed),
    '',
    ...buildLines(fixed),
    '',
    ...(mended ? [...mendedLines(mended, answer.paired), ''] : []),
    `Futures are drawn with these numbers (seed ${seed}), each of which "overrides" of the campus file can replace:`,
    ...odds.map((o) => `  ${o.key}: ${o.value} ${o.unit} (${o.source.split(':', 1).join('')})`),
    'The same in every future, and so not sampled:',
    ...held.map((line) => `  ${line}`),
    ...(leftOut.length > 0 ? ['Left out:', ...leftOut.map((line) => `  ${line}`)] : []),
  ];
}

function promisesLines({ promises, mostErrorPoints }: Result): string[] {
  if (promises.length === 0) return ['The campus file holds no promise.'];
  return [
    `Promises, and the share of futures in which each is kept through a year (give or take ${whole.format(mostErrorPoints)} percentage points at the most):`,
    ...promises.map(promiseLine),
  ];
}

function fiscal(year: number): string {
  return `FY${String(year % 100).padStart(2, '0')}`;
}

function promiseLine(promise: Promised): string {
  const { name, keptThrough, planBreaks, public: isPublic } = promise;
  const label = `  ${name}${isPublic ? ' (public)' : ''}: `;
  const plan = planBreaks === null ? '' : ` The plan itself breaks it in ${fiscal(planBreaks)}.`;
  const last = keptThrough.at(-1);
  const turns = keptThrough.filter(
    (k, i) => i + 1 < keptThrough.length && k.share > (keptThrough[i + 1]?.share ?? 0),
  );
  if (turns.length <= 1 || !last) {
    return `${label}kept in ${last ? shareInWords(last) : 'no year'}.${plan}`;
  }
  const every = Math.ceil(turns.length / MOST_YEARS);
  const shown = [...turns.filter((_, i) => i % every === 0), last];
  const years = shown.map((k) => `through ${fiscal(k.year)} in ${shareInWords(k)}`).join(', ');
  return `${label}${years}.${plan}`;
}

function shortLines({ firstShort }: Result): string[] {
  if (!firstShort) return ['No season is more likely than not short of care.'];
  const { label, short, unserved } = firstShort;
  return [
    `The first season more likely than not short of care is ${label}: ${ofFutures(short)}. In one of ten,`,
    `${quantileInWords(unserved.p90)} hours or more are left undone then.`,
  ];
}

function seasonLines({ seasons }: Result): string[] {
  const summers = seasons.filter((s) => s.season === 'summer');
  return [
    'Hours of summer care, low / middle / high: one future in ten lies below the first number, one in ten above the last.',
    ...summers.filter((_, place) => place % EVERY === 0).map(seasonLine),
  ];
}

function seasonLine({ label, wanted, there, unserved, short }: Season): string {
  const parts = [
    `wanted ${threeInWords(wanted)}`,
    `there ${threeInWords(there)}`,
    `left undone ${threeInWords(unserved)}`,
    `short in ${shareInWords(short)}`,
  ];
  return `  ${label}: ${parts.join('; ')}`;
}

function giftLines({ gifts }: Result): string[] {
  if (gifts.length === 0) return ['The plan counts on no gift or grant.'];
  return [
    'Gifts and grants that the plan counts on, and futures in which some of the money lapses unspent:',
    ...gifts.map(({ name, dollars: given, comes, lost, lostInPlanDollars: inPlan }) => {
      const plan = inPlan >= 100 ? `; in the plan itself, ${dollars(inPlan)} lapse` : '';
      return `  ${name}, ${dollars(given)}: comes in ${shareInWords(comes)}, lapses in ${shareInWords(lost)}${plan}.`;
    }),
  ];
}

function buildLines(result: Result): string[] {
  const { skipped, unpaid, unpaidFromDollars, unpaidDollars, compostShort } = result;
  const tenth = quantileInWords(unpaidDollars.p90);
  const most90 =
    unpaidDollars.p90.value < unpaidFromDollars ? '' : `; in one of ten, $${tenth} or more`;
  const most = skipped.slice(0, 5).map((s) => `${s.site} ${s.name} (${shareInWords(s)})`);
  return [
    skippedLine(result),
    ...(most.length > 0 ? [`  Most often: ${most.join(', ')}.`] : []),
    `Running costs of ${dollars(unpaidFromDollars)} or more over all years stay unpaid in ${ofFutures(unpaid)}${most90}.`,
    `Compost is missing in ${ofFutures(compostShort)}.`,
  ];
}

function skippedLine({ builtSites, skippedSites }: Result): string {
  return `Sites built, low / middle / high: ${threeInWords(builtSites)}. Sites of the plan that are never built: ${threeInWords(skippedSites)}.`;
}

function differenceInWords({ p10, p50, p90 }: Spread): string {
  return [p10, p50, p90].map(moreInWords).join(' / ');
}

/** One future in ten lies below the first number, one in ten above the last. */
function threeInWords({ p10, p50, p90 }: Spread): string {
  return quantilesInWords([p10, p50, p90]).join(' / ');
}

/** What planning anew changes: promises and builds. */
function mendedLines(mended: Result, paired: FuturesAnswer['paired']): string[] {
  return [
    `The plan made anew each year, in ${whole.format(mended.futures)} of the same futures. ${mended.recourse}`,
    '',
    ...promisesLines(mended),
    ...shortLines(mended),
    skippedLine(mended),
    ...(paired ? pairedLines(paired) : []),
  ];
}

/** Future by future, against the plan kept as it is. */
function pairedLines({ futures, promises, moreBuilt, moreUnserved }: Paired): string[] {
  const changed = promises.filter(({ longer, shorter }) => longer.share + shorter.share > 0);
  return [
    `Against the plan kept as it is, in the same ${counted(futures, 'future')}:`,
    ...changed.map(
      ({ name, longer, shorter }) =>
        `  ${name}: kept longer in ${ofFutures(longer)}, less long in ${ofFutures(shorter)}.`,
    ),
    ...(changed.length === 0 ? ['  No promise is kept longer or less long.'] : []),
    `  Sites built, low / middle / high: ${differenceInWords(moreBuilt)}.`,
    `  Hours of care left undone over all years, low / middle / high: ${differenceInWords(moreUnserved)}.`,
  ];
}
