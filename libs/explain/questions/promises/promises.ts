import { yearAt } from '#domain/calendar.js';
import type { Commitment } from '#domain/commitment.js';
import { benefitPlace, tiersOf } from '#optimizer/tiers/tier-list.js';
import { withoutCommitment } from '#optimizer/solve/relaxations.js';
import { sitesCounted } from '#rules/sites-each-year/check.js';
import { fiscalYearLabel, type FiscalYear } from '#units/fiscal-year.js';
import { listInWords } from '#units/in-words.js';
import { yearsOf } from '../../overview/promises/yearly.js';
import type { Asked } from '../common/asked.js';
import { fairEffort, madeBy } from '../common/fair-effort.js';
import type { WorseBy } from '../common/worse-by.js';
import { changesBetween, changesInWords } from '../courses/difference.js';
import {
  followCourses,
  notFollowed,
  withoutPlan,
  type Course,
  type FollowedPlan,
} from '../courses/follow-courses.js';
import { lastKept } from '../limits/last-kept.js';
import { yearlyPromise, type YearlyPromise } from '../limits/prefix.js';
import type { PromisePrice, PromisesAnswer, SkippedYears } from './answer.js';
import { skippingYears } from './skipping.js';

/** Most years of the yearly promise that are let go. */
const MOST_SKIPPED = 5;

/** Share of the time for the plans with and without; the rest is for the last year kept. */
const SHARE = 0.6;

const NOT_MODELLED =
  'A promise may also bring what no number here holds: trust, visibility, and gifts that follow from it.';

/** What each promise costs: the difference of two plans, one that has it and one that has not. */
export async function promises(asked: Asked): Promise<PromisesAnswer> {
  const { campus } = asked;
  const own = { id: 'as-it-is', name: 'the campus as it is', campus };
  const letGo = campus.commitments.map(({ id, name }) => ({
    ...{ id, name: `without “${name}”` },
    campus: withoutCommitment(campus, id),
  }));
  const count = letGo.length + 1 + MOST_SKIPPED;
  const effort = await fairEffort(asked, { count, share: SHARE });
  const [base, ...without] = await followCourses(asked, [own, ...letGo], effort);
  const promise = yearlyPromise(campus);
  const free = without.find((f) => f.id === promise.id);
  const skipped = skipCourses(asked, promise, free);
  const skips = await followCourses(
    asked,
    skipped.map(({ course }) => course),
    effort,
  );
  const prices = campus.commitments.map((c, i) => priceOf(asked, c, { base, without: without[i] }));
  const last = await lastYear(asked, promise);
  return {
    question: 'promises',
    headline: headlineOf(prices, last.lastKeptSentence),
    promises: prices,
    ...last,
    skipping: skips.map((followed, i) => skipRow(skipped[i]?.years ?? [], base, followed)),
    notModelled: NOT_MODELLED,
    made: madeBy(
      effort,
      [asked.seed],
      notFollowed([...(base ? [base] : []), ...without, ...skips]),
    ),
  };
}

interface Pair {
  readonly base: FollowedPlan | undefined;
  readonly without: FollowedPlan | undefined;
}

function priceOf(asked: Asked, commitment: Commitment, { base, without }: Pair): PromisePrice {
  const { id, name, strength } = commitment;
  const [withIt, withoutIt] = [base?.measures ?? null, without?.measures ?? null];
  const row = { id, name, strength, withIt, withoutIt };
  if (!withIt || !withoutIt) {
    return {
      ...row,
      changes: [],
      benefitCost: null,
      sentence: `Without “${name}”: ${withoutPlan(without)}.`,
    };
  }
  const changes = changesBetween(withIt, withoutIt);
  const benefitCost = benefitLoss(asked, withoutIt.benefitPoints, withIt.benefitPoints);
  const sentence = `Without “${name}” (${strength}): ${changesInWords(changes)}.`;
  return { ...row, changes, benefitCost, sentence };
}

/**
 * Benefit that keeping a promise gives up: [max(0, L' - U), U' - L] with L' and U' of the campus without
 * it. Nothing is known of U', since letting a promise go only opens more plans.
 */
function benefitLoss({ campus, tiers }: Asked, without: number, withIt: number): WorseBy {
  const place = benefitPlace(tiersOf(campus));
  const bound = tiers[place]?.bound ?? null;
  const whole = Math.max(1, Math.abs(without));
  const found = Math.max(0, without - withIt);
  const least = bound === null ? 0 : Math.max(0, without - bound);
  return {
    ...{ tier: 'benefit', unit: 'points', found, least, most: null, given: [] },
    shares: { found: found / whole, least: least / whole, most: null },
  };
}

/** Years to let go: those in which a plan without the promise builds nothing that counts, one more each time. */
function skipCourses(
  { campus }: Asked,
  promise: YearlyPromise,
  free: FollowedPlan | undefined,
): { years: FiscalYear[]; course: Course }[] {
  const plan = free?.plan;
  if (!plan) return [];
  const missed = yearsOf({ campus }, promise.test).filter(
    (year) => sitesCounted({ campus, plan }, promise.test, year) < promise.test.count,
  );
  const most = Math.min(MOST_SKIPPED, missed.length);
  return Array.from({ length: most }, (_, i) => {
    const years = missed.slice(0, i + 1);
    const name = `skipping ${listInWords(years.map(fiscalYearLabel))}`;
    return { years, course: { id: name, name, campus: skippingYears(campus, promise, years) } };
  });
}

function skipRow(
  years: readonly FiscalYear[],
  base: FollowedPlan | undefined,
  followed: FollowedPlan,
): SkippedYears {
  const { measures } = followed;
  const labels = years.map(fiscalYearLabel);
  const changes = base?.measures && measures ? changesBetween(base.measures, measures) : [];
  const what = measures ? changesInWords(changes) : withoutPlan(followed);
  return {
    years: labels,
    measures,
    changes,
    sentence: `Skipping ${listInWords(labels)}: ${what}.`,
  };
}

async function lastYear(
  asked: Asked,
  promise: YearlyPromise,
): Promise<Pick<PromisesAnswer, 'lastKept' | 'impossibleThrough' | 'lastKeptSentence'>> {
  const { campus, plan } = asked;
  const most = campus.calendar.horizonYears;
  const years = yearsOf({ campus }, promise.test);
  const missed = years.findIndex(
    (y) => sitesCounted({ campus, plan }, promise.test, y) < promise.test.count,
  );
  const guess = missed < 0 ? years.length : missed;
  const kept = await lastKept(asked, { campus, promise, least: 0, guess, most });
  const label = (count: number) => fiscalYearLabel(yearAt(campus.calendar, count - 1));
  const impossibleThrough = kept.impossibleYears === null ? null : label(kept.impossibleYears);
  if (kept.foundYears === 0 && kept.impossibleYears !== null) {
    const through = kept.impossibleYears === 1 ? 'even in' : 'through';
    return {
      ...{ lastKept: null, impossibleThrough },
      lastKeptSentence: `“${promise.name}” cannot be kept ${through} ${label(kept.impossibleYears)} (proven).`,
    };
  }
  if (kept.foundYears === 0) {
    return {
      ...{ lastKept: null, impossibleThrough },
      lastKeptSentence: `How long “${promise.name}” can be kept was not worked out in the time.`,
    };
  }
  const proof =
    kept.impossibleYears === null
      ? 'whether longer is not known'
      : kept.impossibleYears === kept.foundYears + 1
        ? 'and no longer (proven)'
        : `and not through ${label(kept.impossibleYears)} (proven)`;
  const last = label(kept.foundYears);
  return {
    ...{ lastKept: last, impossibleThrough },
    lastKeptSentence: `“${promise.name}” can be kept in every year through ${last}, with positions that may be asked for; ${proof}.`,
  };
}

function headlineOf(prices: readonly PromisePrice[], last: string): string {
  const dearest = [...prices].sort(
    (a, b) => (b.benefitCost?.found ?? 0) - (a.benefitCost?.found ?? 0),
  )[0];
  return `${last}${dearest ? ` ${dearest.sentence}` : ''}`;
}
