import { yearAt } from '#domain/calendar.js';
import { candidate } from '#domain/campus.js';
import type { PositionType } from '#domain/labor.js';
import type { Fund } from '#domain/money.js';
import { finalPayer, preparedYears, type Placement } from '#domain/plan.js';
import { principalNeeded } from '#estimating/cost/endowment.js';
import { escalationFactor } from '#estimating/cost/escalation.js';
import { coefficient } from '#estimating/defaults/coefficients.js';
import { overridesAt } from '#estimating/defaults/overrides-at.js';
import { moneyNeeds } from '#estimating/plan-needs/money-needs.js';
import { SETTLED_AGE } from '#estimating/site-charges/type-profile.js';
import { centsToDollars, sumCents } from '#units/cents.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import { counted, listInWords, percentInWords, wholeInWords } from '#units/in-words.js';
import type { Ground } from '../../overview/ground.js';
import { careHoursAt } from '../../overview/labor/busy-season.js';
import { costBandOf } from '../../overview/years/cost-band.js';
import { builtParts, partHours, yearsLaterOf } from '../../overview/built-parts.js';
import type { GiftLine, GiftPackage, GiftPackages } from './gift-packages.js';

/** Years of care in the package that builds a place. */
const CARE_YEARS = 10;

const GIVEN: ReadonlySet<Fund['kind']> = new Set(['gift', 'reunion-gift', 'grant']);

/** Packages for a place of the plan. Throws for a site that the plan leaves out. */
export function giftPackages(ground: Ground, site: string): GiftPackages {
  const { campus, placed } = ground;
  const placement = placed.get(site);
  if (!placement) throw new RangeError(`${site} is not in the plan`);
  const payoutShare = coefficient('money.payout', overridesAt(campus));
  return {
    packages: [
      yearOfCare(ground, placement),
      ...positionTerm(ground),
      buildWithCare(ground, placement),
      endowment(ground, placement, payoutShare),
    ],
    alreadyGiven: alreadyGiven(ground, site),
    build: costBandOf(ground, placement),
    payoutShare,
  };
}

function giftPackage(
  words: Pick<GiftPackage, 'title' | 'purpose' | 'notIncluded'>,
  lines: readonly GiftLine[],
): GiftPackage {
  const sum = (of: readonly GiftLine[]) => of.reduce((total, { dollars }) => total + dollars, 0);
  return {
    ...words,
    lines,
    dollars: sum(lines),
    careDollars: sum(lines.filter(({ use }) => use === 'care')),
  };
}

function line(parts: Omit<GiftLine, 'dollars'>): GiftLine {
  return { ...parts, dollars: Math.ceil(parts.exact / 100 - 1e-9) * 100 };
}

/** Hours of care and harvest of a year of age. */
function hoursAt({ campus, charges }: Ground, placement: Placement, age: number): number {
  return campus.calendar.seasons.reduce(
    (sum, _, order) => sum + careHoursAt(charges, placement, { age, order }),
    0,
  );
}

function hourRate({ campus }: Ground, { site }: Placement): number {
  return coefficient('cost.care-hour', overridesAt(campus, candidate(campus, site)));
}

/** A year's supplies in dollars of the price year. */
function suppliesOf({ charges }: Ground, { site, buildType }: Placement): number {
  return centsToDollars(sumCents(charges.of(site, buildType).supplies));
}

function grownYear(ground: Ground, placement: Placement): GiftLine[] {
  const { campus } = ground;
  const hours = hoursAt(ground, placement, SETTLED_AGE);
  const rate = hourRate(ground, placement);
  const of = fiscalYearLabel(campus.calendar.priceYear);
  return [
    line({
      label: 'A year of care by hand, once grown',
      use: 'care',
      exact: hours * rate,
      source: `${counted(hours, 'hour')} at $${rate.toFixed(2)}, ${of} dollars`,
    }),
    line({
      label: 'A year of supplies and renewal',
      use: 'care',
      exact: suppliesOf(ground, placement),
      source: `care ledger of the plan, before growth, ${of} dollars`,
    }),
  ];
}

function yearOfCare(ground: Ground, placement: Placement): GiftPackage {
  return giftPackage(
    {
      title: 'A year of care',
      purpose: 'Planned to keep the whole place in full care for one year.',
      notIncluded: 'Building it, and any other year.',
    },
    grownYear(ground, placement),
  );
}

/** A year of the smallest recurring position that the plan may propose. */
function positionTerm({ campus }: Ground): GiftPackage[] {
  const [smallest] = campus.positions
    .filter((position): position is PositionType => position.term === 'recurring')
    .sort((a, b) => a.annualCost - b.annualCost);
  if (!smallest) return [];
  const of = fiscalYearLabel(campus.calendar.priceYear);
  return [
    giftPackage(
      {
        title: 'A year of a gardener',
        purpose: `Planned to pay one position (${smallest.name}) for one year, for all places of the program.`,
        notIncluded: 'The years after it. The institution decides on every position.',
      },
      [
        line({
          label: `${smallest.name}, one year with benefits`,
          use: 'care',
          exact: centsToDollars(smallest.annualCost),
          source: `position of the campus file, ${of} dollars`,
        }),
      ],
    ),
  ];
}

function buildWithCare(ground: Ground, placement: Placement): GiftPackage {
  const { campus, plan } = ground;
  const label = listInWords(preparedYears(placement).map(fiscalYearLabel));
  const build = plan.spending.filter((s) => s.line === 'build' && s.site === placement.site);
  const care = moneyNeeds(campus, plan.decisions, ground.charges)
    .care.filter(({ site }) => site === placement.site)
    .slice(0, CARE_YEARS);
  const years = care.map(({ yearIndex }) => yearAt(campus.calendar, yearIndex));
  const rate = hourRate(ground, placement);
  const parts = builtParts(ground, placement);
  const hours = years.map((_, index) =>
    parts.reduce((sum, part) => {
      return sum + partHours(ground, part, index + 1 - yearsLaterOf(ground, parts, part));
    }, 0),
  );
  const wages = years.map((year, index) => {
    const growth = escalationFactor(campus.escalation.wages, year - campus.calendar.priceYear);
    return (hours[index] ?? 0) * rate * growth;
  });
  const total = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);
  const span = counted(years.length, 'year');
  return giftPackage(
    {
      title: `The place, with ${span} of care`,
      purpose: `Planned to build the whole place and care for it for ${span}.`,
      notIncluded: 'Care after that, and what a closer estimate may add.',
    },
    [
      line({
        label: 'Building the place',
        use: 'build',
        exact: centsToDollars(sumCents(build.map(({ amount }) => amount))),
        source: `build ledger of the plan, ${label} dollars, AACE class 5`,
      }),
      line({
        label: `${span} of care by hand`,
        use: 'care',
        exact: total(wages),
        source: `${wholeInWords(total(hours))} hours at $${rate.toFixed(2)}, with ${percentInWords(campus.escalation.wages)} growth a year`,
      }),
      line({
        label: `${span} of supplies and renewal`,
        use: 'care',
        exact: centsToDollars(sumCents(care.map(({ amount }) => amount))),
        source: 'care ledger of the plan, dollars of each year',
      }),
    ],
  );
}

function endowment(ground: Ground, placement: Placement, payoutShare: number): GiftPackage {
  const yearly = grownYear(ground, placement).reduce((sum, { exact }) => sum + exact, 0);
  return giftPackage(
    {
      title: 'Care without end',
      purpose: 'An endowment whose payout is planned to pay the care of this place every year.',
      notIncluded: 'Building it. A payout is set each year and may pause; returns are no promise.',
    },
    [
      line({
        label: 'Principal',
        use: 'care',
        exact: principalNeeded(yearly, payoutShare),
        source: `a year of care and supplies, once grown, at ${percentInWords(payoutShare)} payout`,
      }),
    ],
  );
}

function alreadyGiven({ campus, plan }: Ground, site: string): number {
  const funds = new Set(campus.funds.filter(({ kind }) => GIVEN.has(kind)).map(({ id }) => id));
  const spent = plan.spending.filter(
    (s) => s.line === 'build' && s.site === site && funds.has(finalPayer(s).fund),
  );
  return centsToDollars(sumCents(spent.map(({ amount }) => amount)));
}
