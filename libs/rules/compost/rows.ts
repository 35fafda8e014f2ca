import { seasonLabel, seasonInstance } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { COMPOST_GRADES, gradeSupply, type CompostGrade } from '#domain/compost.js';
import { NO_DECISIONS } from '#domain/plan.js';
import { topDressNeeds, topDressSeasons } from '#estimating/plan-needs/compost-needs.js';
import {
  FINE_PARTS,
  PROFILE_PARTS,
  type TypeProfile,
} from '#estimating/site-charges/type-profile.js';
import type { Term, Variable } from '#mip/model.js';
import type { ModelDraft } from '#mip/model-draft.js';
import type { Columns } from '../columns.js';

/**
 * Compost balances in every season of horizon and tail, in cubic yards, both grades together.
 *
 *     stock[i-1] + made[i] + bought[i] - existing[i]
 *        - sum over lives l of build[l, i] x[l] - sum over cohorts g of topDress[g, i] ground[g]
 *        - given[i]  =  stock[i]
 *     0 <= stock[i] <= yard,  given[i] >= 0
 *
 * Where the campus has compost of the other grade, the certified part of the stock must reach by
 * itself for the ground that needs it; what of it goes elsewhere or is given away is the slack:
 *
 *     certified[i]  <=  certified[i-1] + its made[i] + bought[i] - existing[i] - build - topDress
 *     0 <= certified[i] <= stock[i]
 */
export function addCompostRows(draft: ModelDraft, columns: Columns): void {
  const stock = addBalance(draft, columns);
  if (columns.campus.compost.other) addCertified(draft, columns, stock);
}

/** Rows of all compost; gives the stock at the end of each season. */
function addBalance(draft: ModelDraft, columns: Columns): Variable[] {
  const { campus } = columns;
  const standing = topDressNeeds(campus, NO_DECISIONS, columns.charges);
  const uses = compostUses(columns, COMPOST_GRADES);
  const stocks: Variable[] = [];
  standing.all.forEach((fine, season) => {
    const label = labelOf(campus, season);
    const stock = draft.addVariable({
      label: `stock ${label}`,
      kind: 'continuous',
      upper: campus.compost.yard / 100,
    });
    const given = draft.addVariable({ label: `given away ${label}`, kind: 'continuous' });
    const supply = COMPOST_GRADES.reduce((sum, g) => sum + fixedSupply(campus, g, season), 0);
    const fixed = supply - fine / FINE_PARTS;
    const bought = columns.purchases.filter((p) => p.season === season);
    draft.addRow({
      label: `compost ${label}`,
      terms: [
        { variable: stock, coefficient: 1 },
        { variable: given, coefficient: 1 },
        ...lessAll(stocks.slice(-1)),
        ...lessAll(bought.map(({ variable }) => variable)),
        ...(uses.get(season) ?? []),
      ],
      atLeast: fixed,
      atMost: fixed,
    });
    stocks.push(stock);
  });
  return stocks;
}

function addCertified(draft: ModelDraft, columns: Columns, stocks: readonly Variable[]): void {
  const { campus } = columns;
  const standing = topDressNeeds(campus, NO_DECISIONS, columns.charges).certified;
  const uses = compostUses(columns, ['certified']);
  let before: Variable[] = [];
  stocks.forEach((stock, season) => {
    const label = labelOf(campus, season);
    const certified = draft.addVariable({ label: `certified stock ${label}`, kind: 'continuous' });
    const bought = columns.purchases.filter((p) => p.season === season && p.grade === 'certified');
    draft.addRow({
      label: `certified compost ${label}`,
      terms: [
        { variable: certified, coefficient: 1 },
        ...lessAll(before),
        ...lessAll(bought.map(({ variable }) => variable)),
        ...(uses.get(season) ?? []),
      ],
      atMost: fixedSupply(campus, 'certified', season) - (standing[season] ?? 0) / FINE_PARTS,
    });
    draft.addRow({
      label: `certified within stock ${label}`,
      terms: [{ variable: certified, coefficient: 1 }, ...lessAll([stock])],
      atMost: 0,
    });
    before = [certified];
  });
}

function labelOf({ calendar }: Campus, season: number): string {
  return seasonLabel(calendar, seasonInstance(calendar, season));
}

/** Cubic yards of a grade that are made in a season, with the opening stock in the first. */
function fixedSupply({ calendar, compost }: Campus, grade: CompostGrade, season: number): number {
  const { made, openingStock } = gradeSupply(compost, grade);
  const opening = season === 0 ? openingStock : 0;
  return (opening + (made[seasonInstance(calendar, season).season.id] ?? 0)) / 100;
}

function lessAll(variables: readonly Variable[]): Term[] {
  return variables.map((variable) => ({ variable, coefficient: -1 }));
}

/** Cubic yards that each life and cohort uses by season, where it needs one of the grades. */
function compostUses(columns: Columns, grades: readonly CompostGrade[]): Map<number, Term[]> {
  const uses = new Map<number, Term[]>();
  const needs = ({ compostGrade }: TypeProfile) => grades.includes(compostGrade);
  const use = (season: number | undefined, term: Term) => {
    if (season === undefined || term.coefficient === 0) return;
    const terms = uses.get(season);
    if (terms) terms.push(term);
    else uses.set(season, [term]);
  };
  for (const { variable, parts } of columns.lifecycles) {
    for (const { life, charges } of parts.filter((p) => needs(p.charges.profile)))
      use(life.prepared, { variable, coefficient: charges.buildCompost / 100 });
  }
  for (const { variable, life, profile } of columns.cohorts.filter((c) => needs(c.profile))) {
    for (const season of topDressSeasons(columns.campus, life)) {
      use(season, { variable, coefficient: profile.topDress / PROFILE_PARTS });
    }
  }
  return uses;
}
