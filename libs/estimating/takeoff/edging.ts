export interface EdgedSite {
  readonly perimeterFt: number;
  /** Feet of edge along pavement or a wall, where none is set. */
  readonly heldByPavementFt: number;
  readonly pathSqFt: number;
  readonly pathWidthFt: number;
}

/** Feet of edging: the open part of the perimeter and both sides of the path. Never below 0. */
export function edgingFt(site: EdgedSite): number {
  const open = Math.max(0, site.perimeterFt - site.heldByPavementFt);
  return open + 2 * pathFt(site);
}

/** Length of path: area / width. Throws on a width that is not above 0 while there is a path. */
export function pathFt({
  pathSqFt,
  pathWidthFt,
}: Pick<EdgedSite, 'pathSqFt' | 'pathWidthFt'>): number {
  if (pathSqFt === 0) return 0;
  if (!(pathWidthFt > 0)) throw new RangeError(`path width must be above 0 ft, got ${pathWidthFt}`);
  return pathSqFt / pathWidthFt;
}
