import { yearIndexOf } from '#domain/calendar.js';
import { candidate, type Campus, type HandPlacement } from '#domain/campus.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { possibleLifecycles } from '#optimizer/columns/lifecycles.js';
import { benefitPlace, tiersOf } from '#optimizer/tiers/tier-list.js';
import { fiscalYear, fiscalYearLabel, yearsLater, type FiscalYear } from '#units/fiscal-year.js';
import { aimInWords, amountOfTier } from '../../overview/tier-words.js';
import { siteName } from '../../overview/site-words.js';
import type { Asked, Made } from '../common/asked.js';
import { fairEffort, madeBy } from '../common/fair-effort.js';
import { worseBy, type WorseBy } from '../common/worse-by.js';
import { changesBetween, changesInWords, type MeasureChange } from '../courses/difference.js';
import {
  followCourses,
  notFollowed,
  type Course,
  type FollowedPlan,
} from '../courses/follow-courses.js';
import { barsTo } from './bars.js';

/** What is asked: why this site stands where it does, or why not in a year. */
export interface WhyAsk {
  readonly site: string;
  /** The calendar year in which the fiscal year ends. Left out: its own year, or any. */
  readonly year?: number;
}

/** One other place for the site, followed to the end. */
export interface OtherPlace {
  /** Year of preparing; `null`: not built at all, or in any year. */
  readonly year: string | null;
  readonly name: string;
  /** Rules that bar it; empty where it may be planned. */
  readonly bars: readonly string[];
  readonly worse: WorseBy | null;
  readonly changes: readonly MeasureChange[];
  readonly sentence: string;
}

export interface WhyAnswer {
  readonly question: 'why';
  readonly site: string;
  readonly headline: string;
  readonly plannedIn: string | null;
  readonly places: readonly OtherPlace[];
  readonly made: Made;
}

interface Place {
  readonly year: FiscalYear | null;
  readonly name: string;
  readonly hand?: HandPlacement;
}

const SHARE = 0.8;

/** Why a site stands where it does: every other place asked about is forced, planned again, and compared. */
export async function why(asked: Asked, ask: WhyAsk): Promise<WhyAnswer> {
  const { campus, plan } = asked;
  candidate(campus, ask.site);
  const planned = plan.decisions.placements.find((p) => p.site === ask.site);
  const places = placesFor(campus, ask, planned?.year);
  const open = places.filter((p) => barsOf(campus, ask.site, p).length === 0);
  const { base, followed, made } = await follow(asked, ask.site, open);
  const rows = places.map((p) =>
    rowOf(asked, ask.site, { place: p, base, followed: followed.find((f) => f.id === p.name) }),
  );
  const plannedIn = planned ? fiscalYearLabel(planned.year) : null;
  const where = plannedIn === null ? 'is not in this plan' : `is planned for ${plannedIn}`;
  return {
    question: 'why',
    site: ask.site,
    headline: `${siteName(campus, ask.site)} ${where}. ${rows[0]?.sentence ?? ''}`,
    plannedIn,
    places: rows,
    made,
  };
}

/** The places that no rule bars, planned again; nothing is planned where all are barred. */
async function follow(asked: Asked, site: string, open: readonly Place[]) {
  const { campus, seed } = asked;
  if (open.length === 0) {
    const sentence = 'The rules alone answer this; nothing was planned again.';
    return {
      base: undefined,
      followed: [],
      made: { rounds: null, seeds: [], skipped: [], sentence },
    };
  }
  const effort = await fairEffort(asked, { count: open.length + 1, share: SHARE });
  const own: Course = { id: 'as-it-is', name: 'the plan as it is', campus };
  const courses = open.map((p): Course => ({
    id: p.name,
    name: p.name,
    campus: forced(campus, site, p),
  }));
  const [base, ...followed] = await followCourses(asked, [own, ...courses], effort);
  const skipped = notFollowed(followed).map((name) => `built ${name}`.replace('built not', 'not'));
  return { base, followed, made: madeBy(effort, [seed], skipped) };
}

/** A given year; else for a planned site a year sooner, a year later and not at all; else any year. */
function placesFor(
  campus: Campus,
  { site, year }: WhyAsk,
  planned: FiscalYear | undefined,
): Place[] {
  const at = (y: FiscalYear, name: string): Place => ({
    year: y,
    name,
    hand: { site, kind: 'fixed', year: y, reason: 'the question' },
  });
  if (year !== undefined) {
    const fy = fiscalYear(year);
    return [at(fy, `in ${fiscalYearLabel(fy)}`)];
  }
  if (planned === undefined) {
    return [
      {
        year: null,
        name: 'in whichever year suits',
        hand: { site, kind: 'fixed', reason: 'the question' },
      },
    ];
  }
  const { horizonYears } = campus.calendar;
  const around = (
    [
      ['a year sooner', -1],
      ['a year later', 1],
    ] as const
  )
    .map(([name, by]) => at(yearsLater(planned, by), name))
    .filter(({ year: y }) => {
      const index = y === null ? -1 : yearIndexOf(campus.calendar, y);
      return index >= 0 && index < horizonYears;
    });
  return [
    ...around,
    { year: null, name: 'not at all', hand: { site, kind: 'forbidden', reason: 'the question' } },
  ];
}

function forced(campus: Campus, site: string, { hand }: Place): Campus {
  const others = campus.handPlacements.filter((h) => h.site !== site);
  return { ...campus, handPlacements: hand ? [...others, hand] : others };
}

/** What bars a place before any plan is made. */
function barsOf(campus: Campus, site: string, { year, hand }: Place): string[] {
  if (hand?.kind === 'forbidden') return [];
  const free = { ...campus, handPlacements: campus.handPlacements.filter((h) => h.site !== site) };
  const lives = possibleLifecycles(free, campusCharges(free)).filter((l) => l.site === site);
  if (year === null) return lives.length > 0 ? [] : barsTo(campus, site, null);
  const index = yearIndexOf(campus.calendar, year);
  return lives.some((l) => l.yearIndex === index) ? [] : barsTo(campus, site, year);
}

interface Told {
  readonly place: Place;
  readonly base: FollowedPlan | undefined;
  readonly followed: FollowedPlan | undefined;
}

function rowOf(asked: Asked, site: string, { place, base, followed }: Told): OtherPlace {
  const { campus } = asked;
  const bars = barsOf(campus, site, place);
  const year = place.year === null ? null : fiscalYearLabel(place.year);
  const row = { year, name: place.name, bars, worse: null, changes: [] };
  const who = `Built ${place.name}`.replace('Built not at all', 'Not built at all');
  if (bars.length > 0) return { ...row, sentence: `${who}: barred. ${bars.join(' ')}` };
  if (followed?.ending === 'impossible')
    return { ...row, sentence: `${who}: proven that no plan has it.` };
  if (!followed?.measures || !base?.measures)
    return { ...row, sentence: `${who}: not worked out in the time.` };
  const bounds = asked.tiers.map((t) => t.bound);
  const other = { values: followed.values, bounds };
  const worse = worseBy(campus, { values: base.values, bounds }, other);
  const better = worse.found === 0 ? worseBy(campus, other, { values: base.values, bounds }) : null;
  const changes = changesBetween(base.measures, followed.measures);
  const tier = first(asked, better ?? worse, better ? 'better' : 'worse');
  return {
    ...row,
    worse,
    changes,
    sentence: `${who}: ${tier}; in all, ${changesInWords(changes)}.`,
  };
}

function first({ campus }: Asked, { tier, unit, found }: WorseBy, how: 'better' | 'worse'): string {
  const benefit = tiersOf(campus)[benefitPlace(tiersOf(campus))]?.name === tier;
  const amount = amountOfTier(unit, found);
  if (found === 0) return 'no plan found is worse or better for it';
  if (benefit) return `found ${how} by ${amount}`;
  return `${aimInWords(campus, tier)} ${how === 'better' ? 'less' : 'greater'} by ${amount}`;
}
