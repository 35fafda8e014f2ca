import { prepareIndex, seasonInstance, seasonStart, yearAt } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { LaborPool, PositionType } from '#domain/labor.js';
import type { Fund } from '#domain/money.js';
import { askDate } from '#domain/position-dates.js';
import type { Plan } from '#domain/plan.js';
import { firstStartYear } from '#estimating/season-supply/positions.js';
import { centiHours } from '#units/centihours.js';
import { yardsToCenti } from '#units/centiyards.js';
import { cents, centsToDollars } from '#units/cents.js';
import { monthInWords } from '#units/dates-in-words.js';
import { dollarsInWords } from '#units/in-words.js';
import { fiscalYearLabel, yearsLater } from '#units/fiscal-year.js';
import { ASSUMED, type Lever } from './lever.js';
import { siteLevers } from './site-levers.js';

/** Standard additions of a campus, each tried alone. */
export function leversOf(campus: Campus, plan: Plan): Lever[] {
  return [
    ...campus.positions.flatMap((p) => positionLevers(campus, p)),
    moneyLever(campus),
    compostLever(campus),
    ...turnoutLevers(campus),
    ...siteLevers(campus, plan),
  ];
}

function positionLevers(campus: Campus, position: PositionType): Lever[] {
  const first = firstStartYear(campus.calendar, position);
  if (first >= campus.calendar.horizonYears) return [];
  const recurring = position.term === 'recurring';
  const half = recurring && position === dearest(campus) ? [0.5] : [];
  const two = recurring && position.most > 1 ? [2] : [];
  return [...half, 1, ...two].map((count) => positionLever(campus, position, { count, first }));
}

/** Half of it is asked for: half of a smaller one seldom is. */
function dearest({ positions }: Campus): PositionType | undefined {
  const recurring = positions.filter(({ term }) => term === 'recurring');
  return recurring.toSorted((a, b) => b.annualCost - a.annualCost)[0];
}

const COUNTS: Readonly<Record<number, string>> = { 0.5: 'half a', 1: 'one', 2: 'two' };

/** The position is there from the first year it can start, and paid from outside the funds of the plan. */
function positionLever(
  campus: Campus,
  position: PositionType,
  { count, first }: { readonly count: number; readonly first: number },
): Lever {
  const { calendar } = campus;
  const start = yearAt(calendar, first);
  const hours = (of: PositionType['hours']) =>
    Object.fromEntries(Object.entries(of).map(([s, h]) => [s, centiHours(Math.round(h * count))]));
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
  const name = `${COUNTS[count] ?? count} “${position.name}” more from ${fiscalYearLabel(start)}${recurring ? '' : ' in every year'}`;
  return {
    course: { id: `position-${position.id}-${count}`, name, campus: { ...campus, pools } },
    figures: [
      { what: 'granted', value: count, unit: 'positions' },
      { what: 'from', value: fiscalYearLabel(start), unit: 'label' },
    ],
    kind: 'position',
    dollars: centsToDollars(cents(Math.round(count * (yearly + position.oneTimeCost)))),
    askBy: monthInWords(askDate(calendar, position, first)),
    isAsked: true,
    note: 'Paid from outside the funds of this plan.',
  };
}

const MORE_DOLLARS = 25_000;

function moneyLever(campus: Campus): Lever {
  const { calendar } = campus;
  const { firstYear, horizonYears } = calendar;
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
      name: `${dollarsInWords(MORE_DOLLARS)} once, for anything`,
      campus: { ...campus, funds: [...campus.funds, fund] },
    },
    figures: [{ what: 'in hand in', value: fiscalYearLabel(firstYear), unit: 'label' }],
    kind: 'money',
    dollars: MORE_DOLLARS,
    askBy: monthInWords(seasonStart(calendar, seasonInstance(calendar, 0))),
    isAsked: true,
    note: `In hand at the start of ${fiscalYearLabel(firstYear)}, and kept until it is spent; how long a grantor takes to decide is not in the file and comes before.`,
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
    figures: [{ what: 'more each year', value: MORE_YARDS, unit: 'cubic yards' }],
    kind: 'compost',
    dollars: centsToDollars(cents(MORE_YARDS * compost.pricePerYard * calendar.horizonYears)),
    askBy: monthInWords(seasonStart(calendar, seasonInstance(calendar, prepareIndex(calendar, 0)))),
    isAsked: true,
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
      figures: [
        { what: 'more each year', value: people, unit: 'turnouts' },
        { what: 'held more', value: days, unit: 'work days' },
      ],
      kind: 'volunteers',
      dollars: null,
      askBy: monthInWords(
        seasonStart(
          campus.calendar,
          seasonInstance(campus.calendar, prepareIndex(campus.calendar, 0)),
        ),
      ),
      isAsked: true,
      note: 'Its leaders come from the people there are; what it costs beside them is not known.',
    },
  ];
}
