import type { Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import { counted, uncapitalized } from '#units/in-words.js';
import { siteName } from '../../overview/site-words.js';
import { planMeasures, type PlanMeasures } from '../common/plan-measures.js';
import { changesBetween, changesInWords, type MeasureChange } from '../courses/difference.js';

/** A site that stands elsewhere in the second plan. */
export interface MovedSite {
  readonly site: string;
  readonly name: string;
  /** `null`: not in that plan. */
  readonly from: string | null;
  readonly to: string | null;
  readonly fromYear: string | null;
  readonly toYear: string | null;
  readonly sentence: string;
}

/** What differs between two plans of one campus. */
export interface PlansCompared {
  readonly question: 'compare-plans';
  readonly headline: string;
  readonly first: PlanMeasures;
  readonly second: PlanMeasures;
  readonly changes: readonly MeasureChange[];
  readonly moved: readonly MovedSite[];
}

/** Compares two plans number by number and site by site; nothing is planned again. */
export function comparePlans(campus: Campus, a: Plan, b: Plan): PlansCompared {
  const [first, second] = [planMeasures(campus, a), planMeasures(campus, b)];
  const changes = changesBetween(first, second);
  const moved = movedSites(campus, a, b);
  const headline =
    changes.length === 0 && moved.length === 0
      ? 'The two plans build the same sites in the same years, and come to the same.'
      : `The second plan has ${changesInWords(changes)}; ${counted(moved.length, 'site stands', 'sites stand')} elsewhere.`;
  return { question: 'compare-plans', headline, first, second, changes, moved };
}

function movedSites(campus: Campus, a: Plan, b: Plan): MovedSite[] {
  const placeOf = (plan: Plan, site: string) => {
    const p = plan.decisions.placements.find((one) => one.site === site);
    if (!p) return null;
    const year = fiscalYearLabel(p.year);
    return { year, words: `${year} as ${typeName(campus, p.buildType)}` };
  };
  return campus.candidates.flatMap(({ id }) => {
    const [before, after] = [placeOf(a, id), placeOf(b, id)];
    const [from, to] = [before?.words ?? null, after?.words ?? null];
    const years = { fromYear: before?.year ?? null, toYear: after?.year ?? null };
    if (from === to) return [];
    const name = siteName(campus, id);
    const sentence = `${name}: ${from ?? 'not built'}, then ${to ?? 'not built'}.`;
    return [{ site: id, name, from, to, ...years, sentence }];
  });
}

function typeName({ buildTypes }: Campus, id: string): string {
  return uncapitalized(buildTypes.find((t) => t.id === id)?.name ?? id);
}
