import { seasonLabel, seasonInstance } from '#domain/calendar.js';
import { NO_DECISIONS } from '#domain/plan.js';
import { topDressNeeds, topDressSeasons } from '#estimating/plan-needs/compost-needs.js';
import { FINE_PARTS, PROFILE_PARTS } from '#estimating/site-charges/type-profile.js';
import type { Term } from '#mip/model.js';
import type { ModelDraft } from '#mip/model-draft.js';
import type { Columns } from '../columns.js';

/**
 * Compost balances in every season of horizon and tail, in cubic yards.
 *
 *     stock[i-1] + made[i] + bought[i] - existing[i]
 *        - sum over lives l of build[l, i] x[l] - sum over cohorts g of topDress[g, i] ground[g]
 *        - given[i]  =  stock[i]
 *     0 <= stock[i] <= yard,  given[i] >= 0
 */
export function addCompostRows(draft: ModelDraft, columns: Columns): void {
  const { campus } = columns;
  const standing = topDressNeeds(campus, NO_DECISIONS, columns.charges);
  const uses = compostUses(columns);
  let before: Term[] = [];
  standing.forEach((fine, season) => {
    const instance = seasonInstance(campus.calendar, season);
    const label = seasonLabel(campus.calendar, instance);
    const stock = draft.addVariable({
      label: `stock ${label}`,
      kind: 'continuous',
      upper: campus.compost.yard / 100,
    });
    const given = draft.addVariable({ label: `given away ${label}`, kind: 'continuous' });
    const opening = season === 0 ? campus.compost.openingStock : 0;
    const made = campus.compost.made[instance.season.id] ?? 0;
    const fixed = (opening + made) / 100 - fine / FINE_PARTS;
    const bought = columns.purchases.filter((p) => p.season === season);
    draft.addRow({
      label: `compost ${label}`,
      terms: [
        { variable: stock, coefficient: 1 },
        { variable: given, coefficient: 1 },
        ...before,
        ...bought.map(({ variable }) => ({ variable, coefficient: -1 })),
        ...(uses.get(season) ?? []),
      ],
      atLeast: fixed,
      atMost: fixed,
    });
    before = [{ variable: stock, coefficient: -1 }];
  });
}

/** Cubic yards that each life and cohort uses, by season. */
function compostUses(columns: Columns): Map<number, Term[]> {
  const uses = new Map<number, Term[]>();
  const use = (season: number | undefined, term: Term) => {
    if (season === undefined || term.coefficient === 0) return;
    const terms = uses.get(season);
    if (terms) terms.push(term);
    else uses.set(season, [term]);
  };
  for (const { variable, parts } of columns.lifecycles) {
    for (const { life, charges } of parts)
      use(life.prepared, { variable, coefficient: charges.buildCompost / 100 });
  }
  for (const { variable, life, profile } of columns.cohorts) {
    for (const season of topDressSeasons(columns.campus, life)) {
      use(season, { variable, coefficient: profile.topDress / PROFILE_PARTS });
    }
  }
  return uses;
}
