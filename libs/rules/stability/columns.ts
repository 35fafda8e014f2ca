import { yearAt } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { placementKey, type Placement } from '#domain/plan.js';
import type { PositionType } from '#domain/labor.js';
import type { Term } from '#mip/model.js';
import type { ModelDraft } from '#mip/model-draft.js';
import { bySite, type Columns } from '../columns.js';
import {
  frozenHires,
  frozenPart,
  frozenSites,
  frozenThrough,
  publishedPlacement,
} from './frozen.js';
import { changeWeight } from './weight.js';

/** A life that decides otherwise in the frozen years than was published gets no column. */
export function keepsFrozenYears(campus: Campus, placement: Placement): boolean {
  const published = publishedPlacement(campus, placement.site);
  return frozenPart(campus, placement) === frozenPart(campus, published);
}

/** Hires of a frozen year, which are as they were published; `undefined` where the year is not frozen. */
export function hiresWhereFrozen(
  campus: Campus,
  position: PositionType,
  yearIndex: number,
): number | undefined {
  const year = yearAt(campus.calendar, yearIndex);
  if (year > frozenThrough(campus)) return undefined;
  return frozenHires(campus)
    .filter((h) => h.position === position.id && h.year === year)
    .reduce((sum, h) => sum + h.count, 0);
}

/**
 * What was published for the frozen years is built. Lives that decide otherwise there have no column.
 *
 *     sum over lives l of s  of  x[l]  >=  1     for each site s that was published for a frozen year
 */
export function addFrozenRows(draft: ModelDraft, columns: Columns): void {
  const { campus } = columns;
  const lives = bySite(columns);
  for (const site of frozenSites(campus)) {
    draft.addRow({
      label: `stability ${site}`,
      terms: (lives.get(site) ?? []).map(({ variable }) => ({ variable, coefficient: 1 })),
      atLeast: 1,
    });
  }
}

/**
 * Weighted number of sites that are not as they were published.
 *
 *     sum over published sites s of  weight[s] (1 - x[as published])  +  sum over others s, lives l of  weight[s] x[l]
 *
 * The constant is carried by a column fixed at 1, so that values and bounds need no correction.
 */
export function changeTerms(draft: ModelDraft, columns: Columns): Term[] {
  const { campus } = columns;
  const published = (campus.published?.placements ?? []).filter(
    (p) => p.year >= campus.calendar.firstYear,
  );
  const one = draft.addVariable({ label: 'published', kind: 'continuous', lower: 1, upper: 1 });
  const whole = published.reduce((sum, p) => sum + changeWeight(campus, p.site), 0);
  const lives = columns.lifecycles.flatMap((l) => {
    const before = publishedPlacement(campus, l.site);
    const weight = changeWeight(campus, l.site);
    if (!before) return [{ variable: l.variable, coefficient: weight }];
    return placementKey(before) === placementKey(l.placement)
      ? [{ variable: l.variable, coefficient: -weight }]
      : [];
  });
  return [{ variable: one, coefficient: whole }, ...lives];
}
