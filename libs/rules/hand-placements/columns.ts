import { yearIndexOf } from '#domain/calendar.js';
import type { Campus, HandPlacement } from '#domain/campus.js';
import type { ModelDraft } from '#mip/model-draft.js';
import { countTerms, type Columns } from '../columns.js';

interface Place {
  readonly site: string;
  readonly buildType: string;
  readonly yearIndex: number;
}

/** A life that was forbidden by hand gets no column. */
export function allowedByHand(campus: Campus, place: Place): boolean {
  return !campus.handPlacements.some((h) => h.kind === 'forbidden' && fits(campus, h, place));
}

/**
 * What was fixed by hand is built.
 *
 *     sum over lives l that fit hand placement h  of  x[l]  >=  1     for each fixed h
 */
export function addHandPlacementRows(draft: ModelDraft, columns: Columns): void {
  for (const hand of columns.campus.handPlacements.filter((h) => h.kind === 'fixed')) {
    draft.addRow({
      label: `hand-placements ${hand.site}`,
      terms: countTerms(columns, (l) => fits(columns.campus, hand, l)),
      atLeast: 1,
    });
  }
}

function fits(campus: Campus, hand: HandPlacement, place: Place): boolean {
  if (hand.site !== place.site) return false;
  if (hand.buildType !== undefined && hand.buildType !== place.buildType) return false;
  return hand.year === undefined || yearIndexOf(campus.calendar, hand.year) === place.yearIndex;
}
