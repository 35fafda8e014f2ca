import type { Campus } from '#domain/campus.js';
import { publishedPlacement } from './frozen.js';

/** What one change of a site weighs: more where people outside the program were told of it. */
export function changeWeight(campus: Campus, site: string): number {
  if (!campus.published) return 0;
  const { announcedWeight, otherWeight } = campus.published;
  return publishedPlacement(campus, site)?.announced ? announcedWeight : otherWeight;
}
