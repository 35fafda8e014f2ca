import { buildType, type Campus } from '#domain/campus.js';
import { finalPayer, type Placement, type Plan } from '#domain/plan.js';
import { cents, centsToDollars } from '#units/cents.js';
import { groundOf, type Ground } from '../../overview/ground.js';
import { careHoursAt } from '../../overview/labor/busy-season.js';
import { seasonRows } from '../../overview/labor/season-rows.js';
import { fundYears } from '../../overview/ledgers/fund-years.js';
import { lapseRows } from '../../overview/ledgers/money-rows.js';
import { limitRows } from '../../overview/limits/limit-rows.js';
import { nextYear } from '../../overview/next/next-year.js';
import { yearRows } from '../../overview/years/year-rows.js';
import type { ChoiceRow, GiftAmount } from './answer.js';

/** Years over which the care that a site adds is looked at. */
const YEARS_AHEAD = 10;

export type Facts = Pick<
  ChoiceRow,
  | 'buildTypes'
  | 'firstLimit'
  | 'busySeason'
  | 'busySeasonHours'
  | 'cost'
  | 'giftsUsed'
  | 'openGates'
  | 'reasons'
  | 'against'
> & { readonly firstLimitPlace: number | null; readonly lapses: readonly GiftAmount[] };

/** What a plan says of the sites that it builds next year. */
export function choiceFacts(campus: Campus, plan: Plan, sites: readonly string[]): Facts {
  const ground = groundOf(campus, plan);
  const seasons = seasonRows(ground);
  const ledger = fundYears(campus, plan);
  const [limit] = limitRows(ground, { seasons, years: yearRows(ground), ledger }).filter(
    ({ year }) => year !== null,
  );
  const placements = sites.flatMap((id) => ground.placed.get(id) ?? []);
  const shown = nextYear(ground, seasons).sites.filter(({ site }) => sites.includes(site));
  return {
    buildTypes: placements.map((p) => buildType(campus, p.buildType).name),
    firstLimit: limit ? { resource: limit.resource, label: limit.label ?? '' } : null,
    firstLimitPlace: limit ? seasons.findIndex(({ year }) => year === limit.year) : null,
    busySeason: ground.busy.id,
    busySeasonHours: peakHours(ground, placements),
    cost: costOf(shown),
    giftsUsed: giftsUsed(ground, sites),
    openGates: shown.flatMap(({ openGates }) => openGates),
    reasons: shown.flatMap(({ reasons }) => reasons),
    against: shown.flatMap(({ against }) => against),
    lapses: lapsesByFund(lapseRows(ledger)),
  };
}

/** Over all years, since a plan may let a gift lapse in parts. */
function lapsesByFund(rows: readonly GiftAmount[]): GiftAmount[] {
  const byFund = new Map<string, GiftAmount>();
  for (const { fund, name, dollars } of rows) {
    const before = byFund.get(fund)?.dollars ?? 0;
    byFund.set(fund, { fund, name, dollars: before + dollars });
  }
  return [...byFund.values()];
}

function peakHours({ charges, busy }: Ground, placements: readonly Placement[]): number {
  const ages = Array.from({ length: YEARS_AHEAD }, (_, i) => i + 1);
  const hoursAt = (age: number) =>
    placements.reduce((sum, p) => sum + careHoursAt(charges, p, { age, order: busy.order }), 0);
  return Math.max(0, ...ages.map(hoursAt));
}

function costOf(shown: ReturnType<typeof nextYear>['sites']): ChoiceRow['cost'] {
  const [first] = shown;
  if (!first) return null;
  const sum = (part: 'low' | 'likely' | 'high') =>
    shown.reduce((total, { cost }) => total + cost[part], 0);
  return { ...first.cost, low: sum('low'), likely: sum('likely'), high: sum('high') };
}

function giftsUsed({ campus, plan }: Ground, sites: readonly string[]): GiftAmount[] {
  return campus.funds.flatMap(({ id, name, inflows }) => {
    const spent = plan.spending.filter((s) => {
      const payer = finalPayer(s);
      const restriction = inflows[payer.inflow]?.restriction;
      const bound =
        restriction && (restriction.sites !== 'any' || restriction.buildTypes !== 'any');
      return payer.fund === id && bound && s.line === 'build' && sites.includes(s.site ?? '');
    });
    const dollars = centsToDollars(cents(spent.reduce((sum, { amount }) => sum + amount, 0)));
    return dollars > 0 ? [{ fund: id, name, dollars }] : [];
  });
}
