import { plannedYears, yearAt, yearIndexOf } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { sitesCounted } from '#rules/sites-each-year/check.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import { capitalized } from '#units/in-words.js';
import { groundOf } from '../../overview/ground.js';
import { seasonRows } from '../../overview/labor/season-rows.js';
import { fundYears } from '../../overview/ledgers/fund-years.js';
import { limitRows } from '../../overview/limits/limit-rows.js';
import { yearsOf as yearsOfPromise } from '../../overview/promises/yearly.js';
import { yearRows } from '../../overview/years/year-rows.js';
import type { Asked, Made } from '../common/asked.js';
import { annualHours } from './annual-hours.js';
import type { LimitsAnswer, PromiseLimit } from './answer.js';
import { decided, lastIn, type LastKept, type Sought } from './last-kept.js';
import { Prefixes } from './prefixes.js';
import { yearlyPromise, type YearlyPromise } from './prefix.js';
import { onlySitesLimited, resourcesOf } from './resources.js';
import { sitesLast, type SitesLast } from './sites-last.js';

/** What breaks first: in this plan, and of the promise with one resource limited at a time. */
export async function limits(asked: Asked): Promise<LimitsAnswer> {
  const { campus } = asked;
  const promise = yearlyPromise(campus);
  const { alone, together } = await promiseLimits(asked, promise);
  const { ofPlan, annual } = planLimits(asked);
  const untold = [...alone, ...together].filter((l) =>
    l.tried.some((t) => t.ending === 'not-found'),
  );
  return {
    question: 'limits',
    headline: headlineOf({ ofPlan, annual, alone, together, promise }),
    promise: promise.name,
    ofPlan,
    annual,
    ofPromise: alone,
    together,
    made: made(asked, untold),
  };
}

function planLimits({ campus, plan }: Asked): Pick<LimitsAnswer, 'ofPlan' | 'annual'> {
  const ground = groundOf(campus, plan);
  const seasons = seasonRows(ground);
  const rows = { seasons, years: yearRows(ground), ledger: fundYears(campus, plan) };
  return { ofPlan: limitRows(ground, rows), annual: annualHours(seasons) };
}

async function promiseLimits(
  asked: Asked,
  promise: YearlyPromise,
): Promise<{ alone: PromiseLimit[]; together: PromiseLimit[] }> {
  const { campus } = asked;
  const horizon = campus.calendar.horizonYears;
  const own = yearsKept(asked, promise);
  asked.onStep?.('Seeing how far the sites alone carry the promise', 0.1);
  const enough = sitesLast(campus, promise);
  const hints = [enough, { years: own, decisions: asked.plan.decisions }];
  const prefixesOf = (of: Campus) => new Prefixes(asked, { campus: of, promise, hints });
  const sites = await sitesKept(asked, prefixesOf(onlySitesLimited(campus)), enough);
  const most = sites.impossibleYears === null ? horizon : sites.impossibleYears - 1;
  const courses = coursesOf(campus).map((c) => ({ ...c, prefixes: prefixesOf(c.alone) }));
  const unhired = Math.min(own, yearsBeforeHires(asked));
  const all = await followed(asked, courses, { own, unhired, most });
  const rows = withImplied(all).map((found) => rowOf(campus, { ...found, most }));
  const siteRow = rowOf(campus, { id: 'sites', name: 'sites', kept: sites, most: Infinity });
  const alone = [...rows.filter((r) => !isJoint(r)), siteRow].sort(
    (a, b) => yearsOf(a, campus) - yearsOf(b, campus),
  );
  return { alone, together: rows.filter(isJoint) };
}

/** To which year the sites alone carry the promise; where they are used up is proven without a solve. */
async function sitesKept(asked: Asked, prefixes: Prefixes, enough: SitesLast): Promise<LastKept> {
  const { years, isProven } = enough;
  const most = isProven ? years : asked.campus.calendar.horizonYears;
  const kept = await lastIn(asked, prefixes, { least: 0, guess: years, most });
  return isProven ? { ...kept, impossibleYears: kept.impossibleYears ?? years + 1 } : kept;
}

interface Course {
  readonly id: string;
  readonly name: string;
  readonly prefixes: Prefixes;
}

function coursesOf(campus: Campus) {
  return [
    { ...TOGETHER, alone: { ...campus, positions: [] } },
    ...(campus.positions.length > 0 ? [{ ...HIRING, alone: campus }] : []),
    ...resourcesOf(campus),
  ];
}

const isJoint = ({ id }: { readonly id: string }) => id === TOGETHER.id || id === HIRING.id;

/**
 * What is likely known first, then each resource alone, then all together between what was found and what
 * is impossible with one; in the end, what is still open is looked at again with the time left.
 */
async function followed(
  asked: Asked,
  courses: readonly Course[],
  { own, unhired, most }: { readonly own: number; readonly unhired: number; readonly most: number },
): Promise<Found[]> {
  const guessOf = ({ id }: Course) => (id === TOGETHER.id ? unhired : own);
  const joint = courses.filter(isJoint);
  const together = joint.find(({ id }) => id === TOGETHER.id);
  await Promise.all(joint.filter((c) => guessOf(c) > 0).map((c) => c.prefixes.ending(guessOf(c))));
  let done = 0;
  const seek = async (course: Course, sought: Sought): Promise<Found & Course> => {
    const kept = await lastIn(asked, course.prefixes, sought);
    done += 1;
    asked.onStep?.(`Seeing how far ${course.name} would carry the promise`, done / courses.length);
    return { ...course, kept };
  };
  const isKnown = together && unhired > 0 && (await together.prefixes.ending(unhired)) === 'found';
  const least = isKnown ? unhired : 0;
  const single = courses.filter((c) => !isJoint(c));
  const alone = await Promise.all(single.map((c) => seek(c, { least, guess: own, most })));
  const ends = alone.flatMap(({ kept }) => kept.impossibleYears ?? []);
  const capOf = ({ id }: Course) =>
    id === TOGETHER.id ? Math.min(most, ...ends.map((y) => y - 1)) : most;
  const jointly = await Promise.all(
    joint.map((c) => seek(c, { least: 0, guess: guessOf(c), most: capOf(c) })),
  );
  const all = courses.flatMap((c) => [...alone, ...jointly].filter(({ id }) => id === c.id));
  return Promise.all(
    all.map(async ({ id, name, prefixes, kept }) => ({
      ...{ id, name },
      kept: await decided(asked, prefixes, { foundYears: kept.foundYears, most }),
    })),
  );
}

const TOGETHER = { id: 'together', name: 'all limits together, without new positions' };
const HIRING = {
  id: 'together-hiring',
  name: 'all limits together, with the positions that may be asked for',
};

type Found = Pick<Told, 'id' | 'name' | 'kept'>;

/**
 * What all limits together carry, each alone carries as well; and what is proven impossible with one
 * limit, or with positions, is impossible with all limits and none.
 */
function withImplied(all: readonly Found[]): Found[] {
  const joint = all.find(({ id }) => id === TOGETHER.id);
  const foundYears = joint?.kept.foundYears ?? 0;
  const proven = all.flatMap(({ kept }) => kept.impossibleYears ?? []);
  const longer = proven.filter((years) => years > foundYears);
  return all.map((found) => {
    const { kept } = found;
    if (found === joint) {
      const impossibleYears = longer.length > 0 ? Math.min(...longer) : null;
      return { ...found, kept: { ...kept, impossibleYears } };
    }
    const years = Math.max(kept.foundYears, foundYears);
    return { ...found, kept: { ...kept, foundYears: years } };
  });
}

/** Years to which this plan keeps the promise without a break, all care served. */
function yearsKept({ campus, plan }: Asked, promise: YearlyPromise): number {
  if (plan.unserved.length > 0) return 0;
  const years = yearsOfPromise({ campus }, promise.test);
  const missed = years.findIndex(
    (year) => sitesCounted({ campus, plan }, promise.test, year) < promise.test.count,
  );
  return missed < 0 ? years.length : missed;
}

function yearsBeforeHires({ campus, plan }: Asked): number {
  return Math.min(
    Infinity,
    ...plan.decisions.hires.map((h) => yearIndexOf(campus.calendar, h.year)),
  );
}

function yearsOf({ keptThrough }: PromiseLimit, { calendar }: Campus): number {
  const labels = Array.from({ length: plannedYears(calendar) }, (_, y) =>
    fiscalYearLabel(yearAt(calendar, y)),
  );
  return keptThrough === null ? -1 : labels.indexOf(keptThrough);
}

interface Told {
  readonly id: string;
  readonly name: string;
  readonly kept: LastKept;
  /** Years to which the candidates alone would carry the promise. */
  readonly most: number;
}

function rowOf({ calendar }: Campus, { id, name, kept, most }: Told): PromiseLimit {
  const label = (years: number) => fiscalYearLabel(yearAt(calendar, years - 1));
  const { foundYears, impossibleYears, tried } = kept;
  const keptThrough = foundYears > 0 ? label(foundYears) : null;
  const impossibleThrough = impossibleYears === null ? null : label(impossibleYears);
  const whole = foundYears >= calendar.horizonYears;
  const sitesEndItFirst = !whole && foundYears >= most;
  const row = { id, name, keptThrough, impossibleThrough, sitesEndItFirst, tried };
  const next = foundYears < plannedYears(calendar) ? label(foundYears + 1) : '';
  return { ...row, sentence: sentenceOf(row, { whole, next }) };
}

function sentenceOf(
  { name, keptThrough, impossibleThrough, sitesEndItFirst }: Omit<PromiseLimit, 'sentence'>,
  { whole, next }: { readonly whole: boolean; readonly next: string },
): string {
  const who = capitalized(name);
  if (whole) return `${who}: enough in every year of the plan.`;
  if (sitesEndItFirst)
    return keptThrough === null
      ? `${who}: nothing to end, since no site may be prepared in ${next}.`
      : `${who}: enough until the sites are used up, after ${keptThrough}.`;
  if (keptThrough === null && impossibleThrough === null)
    return `${who}: not worked out in the time.`;
  if (keptThrough === null && impossibleThrough === next)
    return `${who}: the promise cannot be kept even in ${next} (proven).`;
  if (keptThrough === null)
    return `${who}: not through ${impossibleThrough ?? ''} (proven); how long it can be kept was not worked out in the time.`;
  const until = `through ${keptThrough}`;
  if (impossibleThrough === next)
    return `${who}: the promise can be kept ${until}, and no longer (proven).`;
  const proof =
    impossibleThrough === null
      ? 'whether longer is not known'
      : `not through ${impossibleThrough} (proven), and the years between are not decided`;
  return `${who}: a plan that keeps it ${until} was found; ${proof}.`;
}

/** `a plan was found through FY52, none is possible through FY57`. */
function spanOf({ keptThrough, impossibleThrough }: PromiseLimit): string {
  const found = keptThrough === null ? '' : `kept through ${keptThrough} in a plan found, `;
  return `${found}not through ${impossibleThrough ?? ''}`;
}

function headlineOf(of: {
  readonly ofPlan: LimitsAnswer['ofPlan'];
  readonly annual: LimitsAnswer['annual'];
  readonly alone: readonly PromiseLimit[];
  readonly together: readonly PromiseLimit[];
  readonly promise: YearlyPromise;
}): string {
  const joint = of.together.map(({ sentence }) => sentence).join(' ');
  const ended = of.alone.filter(
    (l) => l.impossibleThrough !== null && l.id !== 'sites' && !l.sitesEndItFirst,
  );
  const [first, next] = ended;
  const alone = first
    ? ` ${capitalized(first.name)} alone would end it first (${spanOf(first)})${next ? `, then ${next.name} (${spanOf(next)})` : ''}.`
    : of.alone.every(
          (l) => l.id === 'sites' || l.sitesEndItFirst || l.sentence.includes('every year'),
        )
      ? ''
      : ' Which resource alone would end it first was not proven.';
  const [seasonal] = of.ofPlan.filter(({ year, unit }) => year !== null && unit === 'hours');
  const hidden = seasonal
    ? ` In this plan ${seasonal.resource} run short in ${seasonal.label ?? ''}; hours added up over the year ${of.annual.year === null ? 'never show it' : `show it only in ${of.annual.year}`}.`
    : '';
  return `How long “${of.promise.name}” can be kept. ${joint}${alone}${hidden}`;
}

function made(asked: Asked, untold: readonly PromiseLimit[]): Made {
  return {
    rounds: null,
    seeds: [asked.seed],
    skipped:
      untold.length > 0
        ? [
            `a plan or a proof for some years of these: ${untold.map(({ name }) => name).join('; ')}`,
          ]
        : [],
    sentence:
      'Each year was tried as the last one of a plan of its own, with all care served to five years after it; a year counts as kept where a verified plan was found, and as impossible where that is proven.',
  };
}
