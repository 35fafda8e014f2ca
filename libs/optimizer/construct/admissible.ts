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

/** Whether a site must wait for another, or another for it. */
export function isOrdered({ precedence }: Campus, site: string): boolean {
  return precedence.some(({ before, after }) => before === site || after === site);
}

/** Sites of which none may be built where one is. */
export function rivalsOf({ exclusiveGroups }: Campus, site: string): string[] {
  const groups = exclusiveGroups.filter(({ sites }) => sites.includes(site));
  return groups.flatMap(({ sites }) => sites.filter((other) => other !== site));
}

function isAlone(campus: Campus, lives: ReadonlySet<Lifecycle>, { site }: Lifecycle): boolean {
  const rivals = rivalsOf(campus, site);
  return rivals.length === 0 || ![...lives].some((other) => rivals.includes(other.site));
}

/** Whether a life waits for others as long as it must, and others for it. */
export function isInOrder(campus: Campus, lives: ReadonlySet<Lifecycle>, life: Lifecycle): boolean {
  const placementOf = (site: string) => {
    if (site === life.site) return life.placement;
    for (const other of lives) if (other.site === site) return other.placement;
    return undefined;
  };
  return campus.precedence.every(({ before, after, yearsApart }) => {
    if (before !== life.site && after !== life.site) return true;
    if (campus.existing.some((s) => s.id === before)) return true;
    const later = placementOf(after);
    if (later === undefined) return true;
    const first = placementOf(before);
    return first !== undefined && later.year >= finishedIn(first) + yearsApart;
  });
}

/** Whether binding promises admit what a life makes of its site. */
export function typeAllowed(campus: Campus, life: Lifecycle): boolean {
  return campus.commitments.every(
    ({ test, strength }) =>
      strength !== 'binding' ||
      test.kind !== 'only-build-types' ||
      typesOf(campus, life.placement).every((type) => test.buildTypes.includes(type)),
  );
}
