import { seasonLabel, yearAt } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { fiscalYear } from '#units/fiscal-year.js';
import type { Outcome } from '../stress/outcome.js';
import type { Setting } from '../stress/setting.js';
import type { FirstShort, FuturesResult, GiftShare, PromiseShare, SeasonCare } from './answer.js';
import { sampledShare, spreadOf } from './share.js';

/** Hours of care in a season from which it is called short. */
const SHORT_HOURS = 1;
/** Dollars from which a gift is called lost, and running costs unpaid. */
const LOST_DOLLARS = 100;
const UNPAID_DOLLARS = 1000;
/** Share of futures from which a skipped site is named. */
const NAMED_SHARE = 0.1;

/** What was asked, and the futures that were met. */
export interface Met {
  readonly setting: Setting;
  /** In the order of the futures. */
  readonly outcomes: readonly Outcome[];
  /** The plan met by no chance at all. */
  readonly asPlanned: Outcome;
  readonly asked: number;
  readonly recourse: string;
}

/** Quantiles and shares over all futures, the same whatever thread met which. */
export function summarize(met: Met): FuturesResult {
  const { outcomes, setting, asked, recourse } = met;
  const of = outcomes.length;
  const seasons = seasonsOf(met);
  const share = (test: (o: Outcome) => boolean) => sampledShare(outcomes.filter(test).length, of);
  return {
    ...{ futures: of, asked, recourse, seasons },
    mostErrorPoints: Math.ceil(98 / Math.sqrt(Math.max(1, of))),
    unpaidFromDollars: UNPAID_DOLLARS,
    firstShort: firstShort(seasons),
    promises: setting.campus.commitments.map((_, place) => promiseOf(met, place)),
    gifts: giftsOf(met),
    builtSites: spreadOf(outcomes.map((o) => o.built)),
    skippedSites: spreadOf(outcomes.map((o) => o.skipped.length)),
    skipped: setting.plan.decisions.placements
      .map(({ site }) => ({
        site,
        name: nameOf(setting.campus, site),
        ...share((o) => o.skipped.includes(site)),
      }))
      .filter((s) => s.share >= NAMED_SHARE)
      .sort((a, b) => b.share - a.share),
    unpaid: share((o) => o.unpaid >= UNPAID_DOLLARS),
    unpaidDollars: spreadOf(outcomes.map((o) => o.unpaid)),
    compostShort: share((o) => o.compostShort >= 1),
  };
}

function nameOf(campus: Campus, site: string): string {
  return campus.candidates.find((s) => s.id === site)?.name ?? site;
}

function seasonsOf({ setting, outcomes }: Met): SeasonCare[] {
  const { calendar } = setting.campus;
  return setting.seasons
    .filter(({ yearIndex }) => yearIndex < calendar.horizonYears)
    .map((instance) => {
      const s = instance.index;
      const hours = (of: (o: Outcome) => Float32Array) => outcomes.map((o) => of(o)[s] ?? NaN);
      const unserved = hours((o) => o.unserved);
      return {
        label: seasonLabel(calendar, instance),
        year: instance.year,
        season: instance.season.id,
        wanted: spreadOf(hours((o) => o.wanted)),
        there: spreadOf(hours((o) => o.there)),
        unserved: spreadOf(unserved),
        short: sampledShare(unserved.filter((h) => h >= SHORT_HOURS).length, outcomes.length),
      };
    });
}

/** The first season whose share of short futures is above a half. */
function firstShort(seasons: readonly SeasonCare[]): FirstShort | null {
  const found = seasons.find(({ short }) => short.share > 0.5);
  if (!found) return null;
  const { label, year, short, unserved } = found;
  return { label, year, short, unserved };
}

function promiseOf({ setting, outcomes, asPlanned }: Met, place: number): PromiseShare {
  const { campus } = setting;
  const promise = campus.commitments[place];
  if (!promise) throw new RangeError(`no commitment at ${place} in ${campus.name}`);
  const { id, name, strength, public: isPublic } = promise;
  const breaks = asPlanned.broken[place] ?? -1;
  return {
    ...{ id, name, strength, public: isPublic },
    planBreaks: breaks < 0 ? null : yearAt(campus.calendar, breaks),
    keptThrough: Array.from({ length: campus.calendar.horizonYears }, (_, year) => ({
      year: yearAt(campus.calendar, year),
      ...sampledShare(
        outcomes.filter((o) => (o.broken[place] ?? -1) < 0 || (o.broken[place] ?? -1) > year)
          .length,
        outcomes.length,
      ),
    })),
  };
}

function giftsOf({ setting, outcomes, asPlanned }: Met): GiftShare[] {
  return setting.campus.funds
    .filter((f) => f.id in asPlanned.lapsed)
    .map(({ id, name, status, inflows }) => {
      const count = (test: (o: Outcome) => boolean) =>
        sampledShare(outcomes.filter(test).length, outcomes.length);
      return {
        ...{ id, name, status },
        dollars: inflows.reduce((sum, flow) => sum + flow.amount, 0) / 100,
        comes: count((o) => id in o.lapsed),
        lost: count((o) => (o.lapsed[id] ?? 0) >= LOST_DOLLARS),
        lostInPlanDollars: asPlanned.lapsed[id] ?? 0,
      };
    });
}

/** The share of a promise through a year; `undefined` outside the horizon. */
export function keptThrough(promise: PromiseShare, year: number) {
  return promise.keptThrough.find((k) => k.year === fiscalYear(year));
}
