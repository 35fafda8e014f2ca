export type Ring = readonly (readonly number[])[];
export type Rings = readonly Ring[];

/** The rings as RFC 7946 (3.1.6) wants them: the outer one counterclockwise, holes clockwise. */
export function rightHanded(rings: Rings): Rings {
  return rings.map((ring, place) => {
    const counterclockwise = turn(ring) > 0;
    return counterclockwise === (place === 0) || turn(ring) === 0 ? ring : [...ring].reverse();
  });
}

/** Above 0 where a ring runs counterclockwise: twice its area in square degrees (shoelace formula). */
function turn(ring: Ring): number {
  const [x0 = 0, y0 = 0] = ring[0] ?? [];
  let sum = 0;
  for (const [place, [x = 0, y = 0]] of ring.entries()) {
    const [nextX = 0, nextY = 0] = ring[(place + 1) % ring.length] ?? [];
    sum += (x - x0) * (nextY - y0) - (nextX - x0) * (y - y0);
  }
  return sum;
}
