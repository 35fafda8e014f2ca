import type { Campus } from '#domain/campus.js';
import type { Lifecycle } from '#rules/columns.js';

/** Whether a life may join others by the rules between sites: once, order, exclusive groups, types. */
export function admissible(
  campus: Campus,
  lives: ReadonlySet<Lifecycle>,
  life: Lifecycle,
): boolean {
  const yearOf = new Map([...lives].map((l) => [l.site, l.yearIndex]));
  if (yearOf.has(life.site)) return false;
  const standing = new Set(campus.existing.map((s) => s.id));
  const ordered = campus.precedence.every(({ before, after, yearsApart }) => {
    if (standing.has(before)) return true;
    const first = before === life.site ? life.yearIndex : yearOf.get(before);
    const later = after === life.site ? life.yearIndex : yearOf.get(after);
    if (later === undefined || (before !== life.site && after !== life.site)) return true;
    return first !== undefined && later >= first + yearsApart;
  });
  const alone = campus.exclusiveGroups.every(
    (g) => !g.sites.includes(life.site) || !g.sites.some((s) => yearOf.has(s)),
  );
  return ordered && alone && typeAllowed(campus, life);
}

function typeAllowed(campus: Campus, life: Lifecycle): boolean {
  return campus.commitments.every(
    ({ test, strength }) =>
      strength !== 'binding' ||
      test.kind !== 'only-build-types' ||
      test.buildTypes.includes(life.buildType),
  );
}
