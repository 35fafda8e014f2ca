import { yearIndexOf } from '#domain/calendar.js';
import { placementKey, type Decisions } from '#domain/plan.js';
import type { Lifecycle } from '#rules/columns.js';
import { hireAs } from '../search/state-of.js';
import { emptyState, type SearchState } from '../search/state.js';
import type { Tables } from '../search/tables.js';
import { mustHave } from './musts.js';
import { isServed, placeFirst } from './try-life.js';

/**
 * As much of an earlier plan as this campus admits: what is fixed or promised by name first, in the
 * life nearest to the earlier one, then every earlier site in the order of its year. Where a site no
 * longer fits its year, the nearest other lives of it are tried. `undefined` where nothing is served.
 *
 * @param people hired only where hours lack, or to begin with those of the earlier plan
 */
export function adopt(
  tables: Tables,
  earlier: Decisions,
  people: 'as needed' | 'as there' = 'as needed',
): SearchState | undefined {
  const state = emptyState(tables);
  if (people === 'as there') hireAs(state, earlier);
  if (!isServed(state)) return undefined;
  const { campus, lifecycles } = tables.ground;
  const yearOf = new Map(
    earlier.placements.map((p) => [p.site, yearIndexOf(campus.calendar, p.year)]),
  );
  const typeOf = new Map(earlier.placements.map((p) => [p.site, p.buildType]));
  const same = new Set(earlier.placements.map(placementKey));
  const distance = (l: Lifecycle) =>
    Math.abs(l.yearIndex - (yearOf.get(l.site) ?? campus.calendar.horizonYears)) +
    (typeOf.get(l.site) === l.buildType ? 0 : 0.5) +
    (same.has(placementKey(l.placement)) ? 0 : 0.25);
  const nearest = (lives: readonly Lifecycle[]) =>
    [...lives].sort((a, b) => distance(a) - distance(b) || a.yearIndex - b.yearIndex);
  const place = (lives: readonly Lifecycle[]) => placeFirst(state, nearest(lives));
  for (const group of mustHave(tables, 'binding')) {
    if (!group.some((l) => state.lives.has(l)) && !place(group)) return undefined;
  }
  const inOrder = [...earlier.placements].sort((a, b) => a.year - b.year);
  for (const { site } of inOrder) place(lifecycles.filter((l) => l.site === site));
  return state;
}
