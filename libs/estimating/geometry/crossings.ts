import type { Position } from '#domain/site.js';
import { isClosed } from './area.js';

/** The first two edges of a ring that meet anywhere but at a shared corner, by index; else undefined. */
export function crossingEdges(ring: readonly Position[]): readonly [number, number] | undefined {
  const edges = edgesOf(ring);
  for (let i = 0; i < edges.length; i += 1) {
    for (let j = i + 1; j < edges.length; j += 1) {
      const one = edges[i];
      const other = edges[j];
      const neighbors = j === i + 1 || (i === 0 && j === edges.length - 1);
      if (!one || !other) continue;
      if (neighbors ? foldsBack(one, other) : meet(one, other)) return [i, j];
    }
  }
  return undefined;
}

type Edge = readonly [Position, Position];

/** Edges of the ring in order; repeated positions give none. */
function edgesOf(ring: readonly Position[]): Edge[] {
  const corners = isClosed(ring) ? ring : [...ring, ...ring.slice(0, 1)];
  const edges: Edge[] = [];
  corners.forEach((from, index) => {
    const to = corners[index + 1];
    if (to && (from[0] !== to[0] || from[1] !== to[1])) edges.push([from, to]);
  });
  return edges;
}

/** Twice the signed area of the triangle: above 0 where c lies left of a to b. */
function turn(a: Position, b: Position, c: Position): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

/**
 * Each edge has the other's ends on different sides, an end upon it counting as neither side. Edges that
 * run along one line are not told here; where a ring has such, an edge beside them is.
 */
function meet([a, b]: Edge, [c, d]: Edge): boolean {
  return (
    Math.sign(turn(a, b, c)) !== Math.sign(turn(a, b, d)) &&
    Math.sign(turn(c, d, a)) !== Math.sign(turn(c, d, b))
  );
}

/** Neighboring edges share a corner; they cross only when one runs back over the other. */
function foldsBack([a, b]: Edge, [c, d]: Edge): boolean {
  const shared = b[0] === c[0] && b[1] === c[1];
  const [start, corner, end] = shared ? [a, b, d] : [d, a, b];
  if (turn(start, corner, end) !== 0) return false;
  const dot =
    (start[0] - corner[0]) * (end[0] - corner[0]) + (start[1] - corner[1]) * (end[1] - corner[1]);
  return dot > 0;
}
