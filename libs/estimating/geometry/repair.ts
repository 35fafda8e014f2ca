import type { Position, Rings } from '#domain/site.js';
import { isClosed, ringMeasures } from './area.js';

/**
 * The same area in the form RFC 7946 asks for: rings closed, repeated positions dropped, outer ring
 * counter-clockwise, holes clockwise. Shapes that cross themselves are not touched: they are rejected.
 */
export function repairBoundary(polygon: Rings): Rings {
  return polygon.map((ring, index) => wound(closed(withoutRepeats(ring)), index === 0 ? 1 : -1));
}

function withoutRepeats(ring: readonly Position[]): readonly Position[] {
  return ring.filter((position, index) => {
    const before = ring[index - 1];
    return !before || before[0] !== position[0] || before[1] !== position[1];
  });
}

function closed(ring: readonly Position[]): readonly Position[] {
  return isClosed(ring) ? ring : [...ring, ...ring.slice(0, 1)];
}

function wound(ring: readonly Position[], sign: 1 | -1): readonly Position[] {
  return ringMeasures(ring).squareMeters * sign < 0 ? [...ring].reverse() : ring;
}
