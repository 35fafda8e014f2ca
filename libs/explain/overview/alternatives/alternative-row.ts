import { seasonIndex } from '#domain/calendar.js';
import { candidate } from '#domain/campus.js';
import type { CostLine } from '#domain/money.js';
import type { Plan } from '#domain/plan.js';
import { careNeeds } from '#estimating/plan-needs/labor-needs.js';
import { CARE_CLASSES, FINE_PARTS } from '#estimating/site-charges/type-profile.js';
import { commitmentShortfall } from '#rules/commitment-shortfall.js';
import { cents, centsToDollars } from '#units/cents.js';
import type { Shortfall } from '#rules/shortfall.js';
import { yearsLater } from '#units/fiscal-year.js';
import {
  capitalized,
  counted,
  dollarsInWords,
  hoursInWords,
  wholeInWords,
} from '#units/in-words.js';
import type { Ground } from '../ground.js';
import { fundYears } from '../ledgers/fund-years.js';
import { lapseRows } from '../ledgers/money-rows.js';
import type { Alternative } from '../plan-overview.js';

/** What a worked-out plan builds, asks for and gives up. */
export function alternativeRow(
  ground: Ground,
  plan: Plan,
  words: Pick<Alternative, 'kind' | 'title' | 'summary'>,
): Alternative {
  const { campus, busy } = ground;
  const sites = plan.decisions.placements.map((p) => candidate(campus, p.site));
  return {
    ...words,
    sitesBuilt: sites.length,
    areaBuiltSqFt: sites.reduce((sum, { areaSqFt }) => sum + areaSqFt, 0),
    capitalDollars: spentOn(ground, plan, 'build'),
    positionDollars: spentOn(ground, plan, 'positions'),
    busySeasonHours: careInLastYear(ground, plan),
    busySeason: busy.id,
    givenUp: [...brokenPromises(ground, plan), ...lostMoney(ground, plan)],
  };
}

/** Within the years of the plan; what its tail costs is left out. */
function spentOn({ campus }: Ground, plan: Plan, line: CostLine): number {
  const { firstYear, horizonYears } = campus.calendar;
  const entries = plan.spending.filter(
    (s) => s.line === line && s.year < yearsLater(firstYear, horizonYears),
  );
  return centsToDollars(cents(entries.reduce((sum, { amount }) => sum + amount, 0)));
}

/** Hours of care in the main care season of the last year of the plan. */
function careInLastYear({ campus, charges, busy }: Ground, plan: Plan): number {
  const { calendar } = campus;
  const last = seasonIndex(calendar, calendar.horizonYears - 1, busy.order);
  const fine = careNeeds(campus, plan.decisions, charges)[last];
  return CARE_CLASSES.reduce((sum, c) => sum + (fine?.[c] ?? 0), 0) / FINE_PARTS;
}

/** More broken promises than this are counted, not named. */
const MOST_NAMED = 2;

function brokenPromises(ground: Ground, plan: Plan): string[] {
  const { campus } = ground;
  const aspirations = campus.commitments.filter(
    (c) => c.strength === 'aspiration' && commitmentShortfall(campus, plan, c).amount > 0,
  ).length;
  const promises = campus.commitments.filter(({ strength }) => strength !== 'aspiration');
  const named = promises.flatMap((commitment) => {
    const { amount, whole, unit } = commitmentShortfall(campus, plan, commitment);
    if (amount === 0) return [];
    const part = whole > 0 && amount < whole;
    const how = part
      ? `${amountMissing(amount, unit)} of ${wholeInWords(whole)} missing`
      : 'not kept';
    return [`${commitment.name} (${commitment.strength}): ${how}`];
  });
  const told =
    named.length > MOST_NAMED
      ? [
          `${counted(named.length, 'promise')} not kept in full, ${bindingBroken(ground, plan)} of them binding`,
        ]
      : named;
  return aspirations === 0 ? told : [...told, `${counted(aspirations, 'aspiration')} not reached`];
}

function bindingBroken({ campus }: Ground, plan: Plan): number {
  return campus.commitments.filter(
    (c) => c.strength === 'binding' && commitmentShortfall(campus, plan, c).amount > 0,
  ).length;
}

function amountMissing(amount: number, unit: Shortfall['unit']): string {
  if (unit === 'hundredths of an hour') return hoursInWords(amount / 100);
  return unit === 'square feet'
    ? `${wholeInWords(amount)} square feet`
    : counted(amount, unit.slice(0, -1));
}

function lostMoney({ campus }: Ground, plan: Plan): string[] {
  const lost = lapseRows(fundYears(campus, plan)).reduce((sum, { dollars }) => sum + dollars, 0);
  return lost > 0 ? [`${capitalized(dollarsInWords(lost))} given is lost`] : [];
}
