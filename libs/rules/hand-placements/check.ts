import type { HandPlacement } from '#domain/campus.js';
import type { Placement } from '#domain/plan.js';
import type { Check } from '../check.js';

/** What was fixed by hand is built so, and what was forbidden by hand is not. */
export const checkHandPlacements: Check = (campus, plan) => {
  const { placements } = plan.decisions;
  return campus.handPlacements
    .filter((hand) => (hand.kind === 'fixed') !== placements.some((p) => matches(hand, p)))
    .map((hand) => ({
      rule: 'hand-placements',
      record: hand.site,
      message:
        hand.kind === 'fixed'
          ? `${hand.site} was fixed by hand${yearText(hand)} and is not built so (${hand.reason})`
          : `${hand.site} was forbidden by hand${yearText(hand)} and is built all the same (${hand.reason})`,
    }));
};

function matches(hand: HandPlacement, placement: Placement): boolean {
  return (
    placement.site === hand.site &&
    (hand.year === undefined || placement.year === hand.year) &&
    (hand.buildType === undefined || placement.buildType === hand.buildType)
  );
}

function yearText(hand: HandPlacement): string {
  return hand.year === undefined ? '' : ` for FY${hand.year}`;
}
