import type { Campus } from '#domain/campus.js';
import { anError, type Problem } from '#domain/problem.js';
import { positionsOf, takePosition } from '#estimating/benefit-points/positions.js';

export type PositionTaken =
  | { readonly ok: true; readonly campus: Campus }
  | { readonly ok: false; readonly problem: Problem };

/** The campus as a position on benefit sees it; the campus itself where none is named. */
export function inPosition(campus: Campus, position: string | undefined): PositionTaken {
  if (position === undefined) return { ok: true, campus };
  const taken = takePosition(campus, position);
  if (!('reason' in taken)) return { ok: true, campus: taken };
  const place = { code: 'BENEFIT-POSITION', record: 'benefit', field: 'position', value: position };
  const remedy = `Name one of ${positionsOf(campus).join(', ')}, or none.`;
  return { ok: false, problem: anError(place, [taken.reason, remedy]) };
}
