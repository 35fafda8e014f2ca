import { yearAt } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { LaborPool, PositionType } from '#domain/labor.js';
import type { Fund } from '#domain/money.js';
import { askDate } from '#domain/position-dates.js';
import type { Plan } from '#domain/plan.js';
import { firstStartYear } from '#estimating/season-supply/positions.js';
import { possibleLifecycles } from '#optimizer/columns/lifecycles.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { settledCare } from '#estimating/site-charges/type-profile.js';
import { centiHours } from '#units/centihours.js';
import { yardsToCenti } from '#units/centiyards.js';
import { cents, centsToDollars } from '#units/cents.js';
import { monthInWords } from '#units/dates-in-words.js';
import { uncapitalized } from '#units/in-words.js';
import { fiscalYearLabel, yearsLater } from '#units/fiscal-year.js';
import { yearlyPromise } from '../limits/prefix.js';
import { skippingYears } from '../promises/skipping.js';
import type { Course } from '../courses/follow-courses.js';

/** Something that could be added or given up, as a changed campus, with what it costs and when to ask. */
export interface Lever {
  readonly course: Course;
  readonly kind: 'position' | 'money' | 'compost' | 'volunteers' | 'lighter' | 'skip';
  /** Dollars over the horizon in the price year, paid by whoever grants it; `null`: not known. */
  readonly dollars: number | null;
  /** Month by which it must be asked for; `null` where nobody is asked. */
  readonly askBy: string | null;
  /** What was assumed. */
  readonly note: string;
}

const ASSUMED = { basis: 'judgement', source: 'a question, not a plan' } as const;

/** Standard additions of a campus, each tried alone. */
export function leversOf(campus: Campus, plan: Plan): Lever[] {
  return [
    ...campus.positions.flatMap((p) => positionLevers(campus, p)),
    moneyLever(campus),
    compostLever(campus),
    ...turnoutLevers(campus),
    ...lighterLevers(campus, plan),
    skipLever(campus),
  ];
}

function positionLevers(campus: Campus, position: PositionType): Lever[] {
  const first = firstStartYear(campus.calendar, position);
  if (first >= campus.calendar.horizonYears) return [];
  const counts = position.term === 'recurring' && position.most > 1 ? [1, 2] : [1];
  return counts.map((count) => positionLever(campus, position, { count, first }));
}

/** The position is there from the first year it can start, and paid from outside the funds of the plan. */
function positionLever(
  campus: Campus,
  position: PositionType,
  { count, first }: { readonly count: number; readonly first: number },
): Lever {
  const { calendar } = campus;
  const start = yearAt(calendar, first);
  const hours = (of: PositionType['hours']) =>
    Object.fromEntries(Object.entries(of).map(([s, h]) => [s, centiHours(h * count)]));
  const pool = {
    name: position.name,
    kind: 'staff' as const,
    tasks: position.tasks,
    provenance: ASSUMED,
  };
  const yearsHeld = calendar.horizonYears - first;
  const recurring = position.term === 'recurring';
  const later: LaborPool = {
    ...pool,
    id: `granted-${position.id}`,
    hours: hours(position.hours),
    from: recurring ? yearsLater(start, 1) : start,
  };
  const opening: LaborPool = {
    ...pool,
    id: `granted-${position.id}-first`,
    hours: hours(position.firstYearHours),
    from: start,
    to: start,
  };
  const pools = [...campus.pools, ...(recurring ? [opening] : []), later];
  const yearly = recurring
    ? position.annualCost * (yearsHeld - 1) + position.firstYearCost
    : position.firstYearCost * yearsHeld;
  const name = `${count === 1 ? 'one more' : 'two more'}: ${position.name} from ${fiscalYearLabel(start)}${recurring ? '' : ' in every year'}`;
  return {
    course: { id: `position-${position.id}-${count}`, name, campus: { ...campus, pools } },
    kind: 'position',
    dollars: centsToDollars(cents(count * (yearly + position.oneTimeCost))),
    askBy: monthInWords(askDate(calendar, position, first)),
    note: 'Paid from outside the funds of this plan.',
  };
}

const MORE_DOLLARS = 25_000;

function moneyLever(campus: Campus): Lever {
  const { firstYear, horizonYears } = campus.calendar;
  const fund: Fund = {
    id: 'granted-money',
    name: 'More money',
    kind: 'reserve',
    status: 'received',
    counted: true,
    floor: cents(0),
    inflows: [
      {
        year: firstYear,
        amount: cents(MORE_DOLLARS * 100),
        lastYear: yearsLater(firstYear, horizonYears - 1),
        restriction: {
          lines: ['build', 'care', 'positions', 'compost', 'standing'],
          sites: 'any',
          buildTypes: 'any',
        },
      },
    ],
  };
  return {
    course: {
      id: 'money',
      name: '$25,000 once, for anything',
      campus: { ...campus, funds: [...campus.funds, fund] },
    },
    kind: 'money',
    dollars: MORE_DOLLARS,
    askBy: null,
    note: `In hand at the start of ${fiscalYearLabel(firstYear)}, and kept until it is spent.`,
  };
}

const MORE_YARDS = 100;

/** A yearly gift of compost in the season of preparing, at the campus's own price. */
function compostLever(campus: Campus): Lever {
  const { compost, calendar } = campus;
  const season = calendar.prepareSeason;
  const made = {
    ...compost.made,
    [season]: yardsToCenti(MORE_YARDS + (compost.made[season] ?? 0) / 100),
  };
  return {
    course: {
      id: 'compost',
      name: `${MORE_YARDS} cubic yards of compost more each year`,
      campus: { ...campus, compost: { ...compost, made } },
    },
    kind: 'compost',
    dollars: centsToDollars(cents(MORE_YARDS * compost.pricePerYard * calendar.horizonYears)),
    askBy: null,
    note: `Delivered in ${season}, counted at the campus's price for bought compost.`,
  };
}

const MORE_TURNOUTS = 40;

/** One more work day of the kind that brings most people, or as many as make the turnouts. */
function turnoutLevers(campus: Campus): Lever[] {
  const [largest] = [...campus.workDays].sort((a, b) => b.peoplePresent - a.peoplePresent);
  if (!largest) return [];
  const days = Math.max(1, Math.round(MORE_TURNOUTS / Math.max(1, largest.peoplePresent)));
  const workDays = campus.workDays.map((d) =>
    d.id === largest.id ? { ...d, mostPerSeason: d.mostPerSeason + days } : d,
  );
  const people = Math.round(days * largest.peoplePresent);
  return [
    {
      course: {
        id: 'turnouts',
        name: `${people} turnouts more each year: “${largest.name}” held ${days === 1 ? 'once' : `${days} times`} more`,
        campus: { ...campus, workDays },
      },
      kind: 'volunteers',
      dollars: 0,
      askBy: null,
      note: 'Its leaders come from the people there are; what it costs beside them is not known.',
    },
  ];
}

/** The two sites with most care as the lightest type that each may become. */
function lighterLevers(campus: Campus, plan: Plan): Lever[] {
  const charges = campusCharges(campus);
  const settled = (site: string, type: string) => {
    const { areaSqFt, profile } = charges.of(site, type);
    return areaSqFt * settledCare(profile, campus.calendar.seasons.length);
  };
  const possible = possibleLifecycles(campus, charges);
  const named = new Set(
    campus.commitments.flatMap(({ test }) => (test.kind === 'named-site' ? [test.site] : [])),
  );
  const free = plan.decisions.placements.filter((p) => !named.has(p.site));
  const changes = free.flatMap((p) => {
    const types = [...new Set(possible.filter((l) => l.site === p.site).map((l) => l.buildType))];
    const [lightest] = types.sort((a, b) => settled(p.site, a) - settled(p.site, b));
    const saved =
      lightest === undefined ? 0 : settled(p.site, p.buildType) - settled(p.site, lightest);
    return lightest !== undefined && saved > 0 ? [{ site: p.site, type: lightest, saved }] : [];
  });
  const chosen = changes.sort((a, b) => b.saved - a.saved).slice(0, 2);
  if (chosen.length === 0) return [];
  const typeOf = new Map(chosen.map((c) => [c.site, c.type]));
  const candidates = campus.candidates.map((c) => {
    const only = typeOf.get(c.id);
    return only === undefined ? c : { ...c, buildTypes: [only] };
  });
  const names = chosen.map(
    ({ site, type }) =>
      `${site} as ${uncapitalized(campus.buildTypes.find((t) => t.id === type)?.name ?? type)}`,
  );
  return [
    {
      course: {
        id: 'lighter',
        name: `a lighter build: ${names.join(' and ')}`,
        campus: { ...campus, candidates },
      },
      kind: 'lighter',
      dollars: 0,
      askBy: null,
      note: 'The sites of this plan, without those promised by name, whose care another type lightens most.',
    },
  ];
}

function skipLever(campus: Campus): Lever {
  const promise = yearlyPromise(campus);
  const year = yearsLater(campus.calendar.firstYear, 1);
  const label = fiscalYearLabel(year);
  return {
    course: {
      id: 'skip',
      name: `the promise let go in ${label} alone`,
      campus: skippingYears(campus, promise, [year]),
    },
    kind: 'skip',
    dollars: 0,
    askBy: null,
    note: 'A site may still be built in that year; it need not be.',
  };
}
