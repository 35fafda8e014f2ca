import type { GateKind } from '#domain/site.js';
import type { Known } from '#units/known.js';
import { failed, type GateFrame, type GateResult, passed, unknown } from './gate-result.js';

/** Gates that an office decides by looking at the place, not by a number. */
export type ReviewedGate = Extract<
  GateKind,
  'heritage' | 'flood-or-wetland' | 'fire-lane' | 'structure'
>;

interface Review {
  readonly ask: string;
  readonly clearedBy: string;
}

/** Whom to ask and what clears each. */
export const REVIEWS: Readonly<Record<ReviewedGate, Review>> = {
  heritage: {
    ask: 'heritage office and, where land or graves may be theirs, tribal nations',
    clearedBy: 'A written finding after consultation; archaeology where the ground is opened.',
  },
  'flood-or-wetland': {
    ask: 'stormwater manager or the permitting agency',
    clearedBy: 'A map check and a wetland or shoreline determination.',
  },
  'fire-lane': {
    ask: 'fire marshal',
    clearedBy: 'A drawing that keeps lanes, hydrants and sight triangles clear, agreed in writing.',
  },
  structure: {
    ask: 'structural engineer',
    clearedBy: 'A load limit for the fill over the structure.',
  },
};

/** The outcome of a review: cleared, refused or not yet made. */
export function reviewGate(
  kind: ReviewedGate,
  cleared: Known<boolean>,
  finding: string,
): GateResult {
  const frame: GateFrame = { kind, ask: REVIEWS[kind].ask };
  if (!cleared.known) return unknown(frame, finding || 'Not reviewed.', REVIEWS[kind].clearedBy);
  return cleared.value ? passed(frame, finding) : failed(frame, finding, REVIEWS[kind].clearedBy);
}
