type Ring = readonly (readonly [number, number])[];

/** A polygon as well-known text (ISO/IEC 13249-3): `POLYGON ((x y, x y, ...), (hole))`. */
export function toWkt(rings: readonly Ring[]): string {
  const texts = rings.map((ring) => `(${ring.map(([x, y]) => `${x} ${y}`).join(', ')})`);
  return `POLYGON (${texts.join(', ')})`;
}

export type WktReading =
  | { readonly ok: true; readonly rings: [number, number][][] }
  | { readonly ok: false; readonly cause: 'multipolygon' | 'other-shape' | 'broken' };

/** Reads a polygon from well-known text; a height beside a position is left out. */
export function fromWkt(text: string): WktReading {
  const plain = text.trim().replace(/^SRID=\d+;/i, '');
  if (/^MULTIPOLYGON/i.test(plain)) return { ok: false, cause: 'multipolygon' };
  if (!/^POLYGON/i.test(plain)) return { ok: false, cause: 'other-shape' };
  const body = /^POLYGON(?:\s+Z)?\s*\(\s*(\(.*\))\s*\)$/is.exec(plain)?.[1];
  if (body === undefined) return { ok: false, cause: 'broken' };
  const rings = body
    .slice(1, -1)
    .split(/\)\s*,\s*\(/)
    .map((ring) => ring.split(',').map(positionOf));
  const whole = rings.every((ring) => ring.every((p) => p !== undefined));
  return whole ? { ok: true, rings } : { ok: false, cause: 'broken' };
}

function positionOf(text: string): [number, number] | undefined {
  const numbers = text.trim().split(/\s+/).map(Number);
  const [x, y] = numbers;
  const isPosition = numbers.length === 2 || numbers.length === 3;
  if (!isPosition || x === undefined || y === undefined) return undefined;
  return numbers.every(Number.isFinite) ? [x, y] : undefined;
}
