import { seasonInstance, seasonLabel } from '#domain/calendar.js';
import { compostNeeds } from '#estimating/plan-needs/compost-needs.js';
import { centiToYards, centiYards } from '#units/centiyards.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import type { Ground } from '../ground.js';
import type { CompostRow } from '../plan-overview.js';

/** Compost of every season of the plan: stock before + made + bought = used + given away + stock. */
export function compostRows({ campus, plan, charges }: Ground): CompostRow[] {
  const { calendar } = campus;
  const needs = compostNeeds(campus, plan.decisions, charges);
  const entries = new Map(plan.compost.map((entry) => [entry.season, entry]));
  const bought = new Map<number, number>();
  for (const { season, cubicYards } of plan.decisions.purchases)
    bought.set(season, (bought.get(season) ?? 0) + cubicYards);
  return needs.slice(0, calendar.horizonYears * calendar.seasons.length).map((season, index) => {
    const instance = seasonInstance(calendar, index);
    const entry = entries.get(index);
    return {
      label: seasonLabel(calendar, instance),
      year: fiscalYearLabel(instance.year),
      made: centiToYards(season.made),
      bought: bought.get(index) ?? 0,
      builds: centiToYards(season.builds),
      topDress: centiToYards(season.topDress),
      givenAway: centiToYards(entry?.givenAway ?? centiYards(0)),
      stock: centiToYards(entry?.stock ?? centiYards(0)),
    };
  });
}
