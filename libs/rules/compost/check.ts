import type { Breach } from '#domain/breach.js';
import { plannedSeasons, seasonLabel, type SeasonInstance } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import { compostNeeds, type CompostSeason } from '#estimating/plan-needs/compost-needs.js';
import type { Check } from '../check.js';

/**
 * In every season: stock before + made + bought = builds + top-dressing + given away + stock, with the
 * stock between nothing and what the yard holds, and purchases whole and within the season's limit.
 */
export const checkCompost: Check = (campus, plan) => {
  const needs = compostNeeds(campus, plan.decisions);
  let before: number = campus.compost.openingStock;
  const found = plannedSeasons(campus.calendar).flatMap((season) => {
    const breaches = seasonBreaches({ campus, plan, season, before, needs: needs[season.index] });
    before = entryOf(plan, season)?.stock ?? before;
    return breaches;
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

interface CompostAt {
  readonly campus: Campus;
  readonly plan: Plan;
  readonly season: SeasonInstance;
  readonly before: number;
  readonly needs: CompostSeason | undefined;
}

function seasonBreaches({ campus, plan, season, before, needs }: CompostAt): Breach[] {
  const label = seasonLabel(campus.calendar, season);
  const entry = entryOf(plan, season);
  if (!entry || !needs) return [breach(label, `${label} has no compost entry, or more than one`)];
  const bought = plan.decisions.purchases
    .filter((p) => p.season === season.index)
    .reduce((sum, p) => sum + p.cubicYards * 100, 0);
  const used = needs.builds + needs.topDress;
  const expected = before + needs.made + bought - used - entry.givenAway;
  const found: Breach[] = [];
  if (expected !== entry.stock || entry.givenAway < 0) {
    found.push(
      breach(
        label,
        `compost does not balance in ${label}: ${before / 100} cy + ${needs.made / 100} made + ${bought / 100} bought - ${used / 100} used - ${entry.givenAway / 100} given away is not ${entry.stock / 100} cy`,
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

function purchaseBreaches(campus: Campus, plan: Plan): Breach[] {
  const seasons = plannedSeasons(campus.calendar).length;
  const seen = new Set<number>();
  return plan.decisions.purchases.flatMap(({ season, cubicYards }) => {
    const twice = seen.has(season);
    seen.add(season);
    const whole = Number.isInteger(cubicYards) && cubicYards > 0;
    const fits =
      cubicYards <= campus.compost.mostBoughtPerSeason && season >= 0 && season < seasons;
    if (whole && fits && !twice) return [];
    return [
      breach(
        seasonName(campus, season),
        `${cubicYards} cy bought: purchases are whole cubic yards, one line a season of the plan, at most ${campus.compost.mostBoughtPerSeason} cy`,
      ),
    ];
  });
}

function seasonName(campus: Campus, season: number): string {
  const instance = plannedSeasons(campus.calendar)[season];
  return instance ? seasonLabel(campus.calendar, instance) : `season ${season}`;
}
