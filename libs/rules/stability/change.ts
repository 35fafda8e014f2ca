import type { Campus } from '#domain/campus.js';
import { placementKey, type Placement, type Plan } from '#domain/plan.js';
import { publishedPlacement } from './frozen.js';
import { changeWeight } from './weight.js';

/** A site that is not as it was published. */
export interface SiteChange {
  readonly site: string;
  readonly kind: 'added' | 'dropped' | 'changed';
  readonly weight: number;
}

/** Sites that a plan adds to the published one, drops from it, or builds otherwise than published. */
export function changesFromPublished(campus: Campus, plan: Plan): SiteChange[] {
  if (!campus.published) return [];
  const placed = new Map(plan.decisions.placements.map((p) => [p.site, p]));
  return campus.candidates.flatMap(({ id: site }) => {
    const kind = changeKind(placed.get(site), publishedPlacement(campus, site));
    return kind === undefined ? [] : [{ site, kind, weight: changeWeight(campus, site) }];
  });
}

function changeKind(
  now: Placement | undefined,
  before: Placement | undefined,
): SiteChange['kind'] | undefined {
  if (!now) return before ? 'dropped' : undefined;
  if (!before) return 'added';
  return placementKey(now) === placementKey(before) ? undefined : 'changed';
}

/** Weighted number of sites that are not as they were published. */
export function changeOf(campus: Campus, plan: Plan): number {
  return changesFromPublished(campus, plan).reduce((sum, c) => sum + c.weight, 0);
}
