import type { Campus } from '#domain/campus.js';
import type { Lifecycle } from '#rules/columns.js';
import { finishedIn, typesOf } from '#rules/counting.js';

/** Whether a life may join others by the rules between sites: once, order, exclusive groups, types. */
export function admissible(
  campus: Campus,
  lives: ReadonlySet<Lifecycle>,
  life: Lifecycle,
): boolean {
  const placed = new Map([...lives].map((l) => [l.site, l.placement]));
  if (placed.has(life.site)) return false;
  const standing = new Set(campus.existing.map((s) => s.id));
  const ordered = campus.precedence.every(({ before, after, yearsApart }) => {
    if (standing.has(before)) return true;
    const first = before === life.site ? life.placement : placed.get(before);
    const later = after === life.site ? life.placement : placed.get(after);
    if (later === undefined || (before !== life.site && after !== life.site)) return true;
    return first !== undefined && later.year >= finishedIn(first) + yearsApart;
  });
  const alone = campus.exclusiveGroups.every(
    (g) => !g.sites.includes(life.site) || !g.sites.some((s) => placed.has(s)),
  );
  return ordered && alone && typeAllowed(campus, life);
}

function typeAllowed(campus: Campus, life: Lifecycle): boolean {
  return campus.commitments.every(
    ({ test, strength }) =>
      strength !== 'binding' ||
      test.kind !== 'only-build-types' ||
      typesOf(campus, life.placement).every((type) => test.buildTypes.includes(type)),
  );
}
