import { plannedYears, yearAt, yearIndexOf } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { sitesCounted } from '#rules/sites-each-year/check.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import { capitalized, listInWords } from '#units/in-words.js';
import { groundOf } from '../../overview/ground.js';
import { seasonRows } from '../../overview/labor/season-rows.js';
import { fundYears } from '../../overview/ledgers/fund-years.js';
import { limitRows } from '../../overview/limits/limit-rows.js';
import { yearsOf as yearsOfPromise } from '../../overview/promises/yearly.js';
import { yearRows } from '../../overview/years/year-rows.js';
import type { Asked, Made } from '../common/asked.js';
import { annualHours } from './annual-hours.js';
import type { LimitsAnswer, PromiseLimit } from './answer.js';
import { lastKept, type LastKept } from './last-kept.js';
import { yearlyPromise, type YearlyPromise } from './prefix.js';
import { onlySitesLimited, resourcesOf } from './resources.js';
import { yearsWithSites } from './sites-last.js';

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
  const seek = (of: Campus, most: number, guess = own) =>
    lastKept(asked, { campus: of, promise, least: 0, guess, most });
  asked.onStep?.('Seeing how far the sites alone carry the promise', 0.1);
  const enough = yearsWithSites(campus, promise);
  const sites = await seek(onlySitesLimited(campus), Math.min(horizon, enough + 1), enough);
  const most = sites.impossibleYears === null ? horizon : sites.impossibleYears - 1;
  const courses = [
    { ...TOGETHER, alone: { ...campus, positions: [] } },
    ...(campus.positions.length > 0 ? [{ ...HIRING, alone: campus }] : []),
    ...resourcesOf(campus),
  ];
  const unhired = Math.min(own, yearsBeforeHires(asked));
  let done = 0;
  const all = await Promise.all(
    courses.map(async ({ id, name, alone }) => {
      const kept = await seek(alone, most, id === TOGETHER.id ? unhired : own);
      done += 1;
      asked.onStep?.(`Seeing how far ${name} would carry the promise`, done / courses.length);
      return { id, name, kept };
    }),
  );
  const rows = withImplied(all).map((found) => rowOf(campus, { ...found, most }));
  const isJoint = ({ id }: { readonly id: string }) => id === TOGETHER.id || id === HIRING.id;
  const siteRow = rowOf(campus, { id: 'sites', name: 'sites', kept: sites, most: Infinity });
  const alone = [...rows.filter((r) => !isJoint(r)), siteRow].sort(
    (a, b) => yearsOf(a, campus) - yearsOf(b, campus),
  );
  return { alone, together: rows.filter(isJoint) };
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
  return { ...row, sentence: sentenceOf(row, { whole, next: label(foundYears + 1) }) };
}

function sentenceOf(
  { name, keptThrough, impossibleThrough, sitesEndItFirst }: Omit<PromiseLimit, 'sentence'>,
  { whole, next }: { readonly whole: boolean; readonly next: string },
): string {
  const who = capitalized(name);
  if (whole) return `${who}: enough in every year of the plan.`;
  if (sitesEndItFirst)
    return `${who}: enough until the sites are used up, after ${keptThrough ?? ''}.`;
  if (keptThrough === null && impossibleThrough === null)
    return `${who}: not worked out in the time.`;
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
  return `“${of.promise.name}”. ${joint}${alone}${hidden}`;
}

function made(asked: Asked, untold: readonly PromiseLimit[]): Made {
  return {
    rounds: null,
    seeds: [asked.seed],
    skipped:
      untold.length > 0
        ? [`a proof for some years of ${listInWords(untold.map(({ name }) => name))}`]
        : [],
    sentence:
      'Each year was tried as the last one of a plan of its own, with all care served to five years after it; a year counts as kept where a verified plan was found, and as impossible where that is proven.',
  };
}
