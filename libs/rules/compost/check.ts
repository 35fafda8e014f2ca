import type { Breach } from '#domain/breach.js';
import { plannedSeasons, seasonLabel, type SeasonInstance } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { COMPOST_GRADES, gradeSupply, type CompostGrade } from '#domain/compost.js';
import { gradeOf, type CompostEntry, type Plan } from '#domain/plan.js';
import { compostNeeds, type CompostSeason } from '#estimating/plan-needs/compost-needs.js';
import type { Check } from '../check.js';

/**
 * In every season: stock before + made + bought = builds + top-dressing + given away + stock, with the
 * stock between nothing and what the yard holds, and purchases whole and within the season's limit.
 * The certified part of it reaches for the ground that needs it, and no other ground is said to have
 * taken more of it than that ground asks for.
 */
export const checkCompost: Check = (campus, plan) => {
  const needs = compostNeeds(campus, plan.decisions);
  const { openingStock, other } = campus.compost;
  let before: Stock = { all: openingStock + (other?.openingStock ?? 0), certified: openingStock };
  const found = plannedSeasons(campus.calendar).flatMap((season) => {
    const at = { campus, plan, season, before, needs: needs[season.index] };
    const breaches = seasonBreaches(at);
    const entry = entryOf(plan, season);
    if (entry) before = { all: entry.stock, certified: certifiedOf(entry).stock };
    return breaches.length > 0 ? breaches : certifiedBreaches(at);
  });
  return [...found, ...purchaseBreaches(campus, plan)];
};

function breach(record: string, message: string): Breach {
  return { rule: 'compost', record, message };
}

/** The one entry of a season; `undefined` where there is none or more than one. */
function entryOf(plan: Plan, season: SeasonInstance) {
  const entries = plan.compost.filter((entry) => entry.season === season.index);
  return entries.length === 1 ? entries[0] : undefined;
}

/** Hundredths of a cubic yard. */
interface Stock {
  readonly all: number;
  readonly certified: number;
}

/** What an entry says of the certified grade: all of it where nothing is said. */
function certifiedOf(entry: CompostEntry): NonNullable<CompostEntry['certified']> {
  return entry.certified ?? entry;
}

interface CompostAt {
  readonly campus: Campus;
  readonly plan: Plan;
  readonly season: SeasonInstance;
  readonly before: Stock;
  readonly needs: CompostSeason | undefined;
}

function seasonBreaches({ campus, plan, season, before, needs }: CompostAt): Breach[] {
  const label = seasonLabel(campus.calendar, season);
  const entry = entryOf(plan, season);
  if (!entry || !needs) return [breach(label, `${label} has no compost entry, or more than one`)];
  const bought = boughtIn(plan, season, COMPOST_GRADES);
  const used = needs.builds + needs.topDress;
  const expected = before.all + needs.made + bought - used - entry.givenAway;
  const found: Breach[] = [];
  if (expected !== entry.stock || entry.givenAway < 0) {
    found.push(
      breach(
        label,
        `compost does not balance in ${label}: ${before.all / 100} cy + ${needs.made / 100} made + ${bought / 100} bought - ${used / 100} used - ${entry.givenAway / 100} given away is not ${entry.stock / 100} cy`,
      ),
    );
  }
  if (entry.stock < 0 || entry.stock > campus.compost.yard) {
    found.push(
      breach(
        label,
        `the yard would hold ${entry.stock / 100} cy in ${label}; it holds 0 to ${campus.compost.yard / 100} cy`,
      ),
    );
  }
  return found;
}

function boughtIn(plan: Plan, season: SeasonInstance, grades: readonly CompostGrade[]): number {
  return plan.decisions.purchases
    .filter((p) => p.season === season.index && grades.includes(gradeOf(p)))
    .reduce((sum, p) => sum + p.cubicYards * 100, 0);
}

/**
 * elsewhere = certified before + made + bought - needed - given away - stock, with each part between
 * nothing and the whole that it is a part of.
 */
function certifiedBreaches({ campus, plan, season, before, needs }: CompostAt): Breach[] {
  const label = seasonLabel(campus.calendar, season);
  const entry = entryOf(plan, season);
  if (!entry || !needs) return [];
  if (!entry.certified && campus.compost.other) {
    return [breach(label, `${label} does not say how much of its compost is certified`)];
  }
  const { givenAway, stock } = certifiedOf(entry);
  const { made, needed } = needs.certified;
  const bought = boughtIn(plan, season, ['certified']);
  const elsewhere = before.certified + made + bought - needed - givenAway - stock;
  const parts = [
    [givenAway, entry.givenAway],
    [stock, entry.stock],
    [elsewhere, needs.builds + needs.topDress - needed],
  ] as const;
  if (parts.every(([part, whole]) => part >= 0 && part <= whole)) return [];
  return [
    breach(
      label,
      `certified compost does not balance in ${label}: ${before.certified / 100} cy + ${made / 100} made + ${bought / 100} bought - ${needed / 100} for food ground - ${givenAway / 100} given away - ${stock / 100} kept leaves ${elsewhere / 100} cy, and other ground takes ${parts[2][1] / 100} cy`,
    ),
  ];
}

function purchaseBreaches(campus: Campus, plan: Plan): Breach[] {
  const seasons = plannedSeasons(campus.calendar).length;
  const seen = new Set<string>();
  return plan.decisions.purchases.flatMap((purchase) => {
    const { season, cubicYards } = purchase;
    const grade = gradeOf(purchase);
    const key = `${grade} ${season}`;
    const twice = seen.has(key);
    seen.add(key);
    const most = gradeSupply(campus.compost, grade).mostBoughtPerSeason;
    const whole = Number.isInteger(cubicYards) && cubicYards > 0;
    const fits = cubicYards <= most && season >= 0 && season < seasons;
    if (whole && fits && !twice) return [];
    return [
      breach(
        seasonName(campus, season),
        `${cubicYards} cy bought: purchases are whole cubic yards, one line a season of the plan and grade, at most ${most} cy`,
      ),
    ];
  });
}

function seasonName(campus: Campus, season: number): string {
  const instance = plannedSeasons(campus.calendar)[season];
  return instance ? seasonLabel(campus.calendar, instance) : `season ${season}`;
}
