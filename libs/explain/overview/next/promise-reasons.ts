import { fiscalYearLabel } from '#units/fiscal-year.js';
import type { Placement } from '#domain/plan.js';
import type { Commitment } from '#domain/commitment.js';
import type { Ground } from '../ground.js';
import type { Weighed } from './weighed.js';

const STRENGTHS: readonly Commitment['strength'][] = ['aspiration', 'intended', 'binding'];

/** The promises that name this site and that it keeps, and a placement that was set by hand. */
export function promiseReasons({ campus }: Ground, placement: Placement): Weighed[] {
  const named = campus.commitments.flatMap(({ name, strength, test, document }) => {
    if (test.kind !== 'named-site' || test.site !== placement.site) return [];
    if (placement.year > test.by) return [];
    if (test.buildTypes !== 'any' && !test.buildTypes.includes(placement.buildType)) return [];
    const sentence = `Keeps the ${strength} promise “${name}”, due by ${fiscalYearLabel(test.by)}.`;
    return [
      {
        side: 'for' as const,
        rank: 'promise' as const,
        size: STRENGTHS.indexOf(strength),
        reason: {
          ...{ sentence, value: 1, unit: 'promise', source: document || 'commitments' },
          figures: [{ what: 'due by', value: fiscalYearLabel(test.by), unit: 'label' }],
        },
      },
    ];
  });
  return [...named, ...byHand(campus.handPlacements, placement)];
}

function byHand(hands: Ground['campus']['handPlacements'], { site, year }: Placement): Weighed[] {
  return hands
    .filter(
      (h) => h.kind === 'fixed' && h.site === site && (h.year === undefined || h.year === year),
    )
    .map(({ reason }) => ({
      side: 'for',
      rank: 'promise',
      size: STRENGTHS.length,
      reason: {
        sentence: `Fixed by hand: ${reason.replace(/\.$/, '')}.`,
        value: null,
        unit: '',
        figures: [],
        source: 'placements set by hand',
      },
    }));
}
