import type { Campus } from '#domain/campus.js';
import type { Lifecycle } from '#rules/columns.js';
import { finishedIn, typesOf } from '#rules/counting.js';

/** Whether a life may join others by the rules between sites: once, order, exclusive groups, types. */
export function admissible(
  campus: Campus,
  lives: ReadonlySet<Lifecycle>,
  life: Lifecycle,
): boolean {
  for (const other of lives) if (other.site === life.site) return false;
  if (!typeAllowed(campus, life)) return false;
  return isAlone(campus, lives, life) && isInOrder(campus, lives, life);
}

function isAlone(campus: Campus, lives: ReadonlySet<Lifecycle>, { site }: Lifecycle): boolean {
  const groups = campus.exclusiveGroups.filter((g) => g.sites.includes(site));
  if (groups.length === 0) return true;
  return ![...lives].some((l) => groups.some((g) => g.sites.includes(l.site)));
}

function isInOrder(campus: Campus, lives: ReadonlySet<Lifecycle>, life: Lifecycle): boolean {
  const orders = campus.precedence.filter((p) => p.before === life.site || p.after === life.site);
  if (orders.length === 0) return true;
  const placed = new Map([...lives].map((l) => [l.site, l.placement]));
  const standing = new Set(campus.existing.map((s) => s.id));
  return orders.every(({ before, after, yearsApart }) => {
    if (standing.has(before)) return true;
    const first = before === life.site ? life.placement : placed.get(before);
    const later = after === life.site ? life.placement : placed.get(after);
    if (later === undefined) return true;
    return first !== undefined && later.year >= finishedIn(first) + yearsApart;
  });
}

function typeAllowed(campus: Campus, life: Lifecycle): boolean {
  return campus.commitments.every(
    ({ test, strength }) =>
      strength !== 'binding' ||
      test.kind !== 'only-build-types' ||
      typesOf(campus, life.placement).every((type) => test.buildTypes.includes(type)),
  );
}
