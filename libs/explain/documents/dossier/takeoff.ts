import type { BuildType } from '#domain/build-type.js';
import { COMPONENTS } from '#domain/component.js';
import { COMPONENT_WORDS } from '#domain/component-words.js';
import type { CandidateSite } from '#domain/site.js';
import { coefficient } from '#estimating/defaults/coefficients.js';
import { overridesAt } from '#estimating/defaults/overrides-at.js';
import type { ExplainedNode } from '#estimating/explained.js';
import type { SiteEstimate } from '#estimating/site/site-estimate.js';
import { sheetFactor } from '#estimating/takeoff/cardboard.js';
import { componentAreas } from '#estimating/takeoff/component-areas.js';
import { centiToYards } from '#units/centiyards.js';
import type { Ground } from '../../overview/ground.js';
import type { ComponentArea, SiteTakeoff } from './site-dossier.js';

export interface BuiltSite {
  readonly site: CandidateSite;
  readonly type: BuildType;
  readonly estimate: SiteEstimate;
}

export function componentRows({ site, type }: BuiltSite): ComponentArea[] {
  const areas = componentAreas(site.areaSqFt, type.shares);
  return COMPONENTS.filter((c) => areas[c] > 0).map((c) => ({
    name: COMPONENT_WORDS[c],
    share: type.shares[c],
    areaSqFt: areas[c],
    compostInches: type.compostInches[c],
    chipInches: type.chipInches[c],
  }));
}

/** Compost is what the plan is charged; the other layers are those of the site's estimate. */
export function takeoffOf({ campus, charges }: Ground, built: BuiltSite): SiteTakeoff {
  const { site, type, estimate } = built;
  const { takeoff } = estimate.sections;
  const areas = componentAreas(site.areaSqFt, type.shares);
  const netCoverSqFt = COMPONENTS.reduce(
    (sum, c) => sum + (type.chipInches[c] > 0 ? areas[c] : 0),
    0,
  );
  const own = overridesAt(campus, site);
  const lapped = sheetFactor({
    lengthFt: coefficient('cardboard.sheet-length', own),
    widthFt: coefficient('cardboard.sheet-width', own),
    lapInches: coefficient('cardboard.lap', own),
  });
  const { rootProtectedShare: roots } = site.facts;
  return {
    compostCuYd: centiToYards(charges.of(site.id, type.id).buildCompost),
    chipsCuYd: valueOf(takeoff, 'wood chips'),
    compostLoads: loadsOf(takeoff, 'compost'),
    chipLoads: loadsOf(takeoff, 'wood chips'),
    pounds: valueOf(takeoff, 'weight of layers'),
    netCoverSqFt,
    cardboardSqFt: netCoverSqFt * lapped,
    topDressCuYdPerYear: valueOf(takeoff, 'top-dress'),
    rootProtectedShare: roots.known ? roots.value : null,
  };
}

/** The value of a node that an estimate always has. */
export function valueOf(nodes: readonly ExplainedNode[], name: string): number {
  const value = nodes.find((node) => node.name.startsWith(name))?.value;
  if (value === undefined || value === null) throw new RangeError(`no estimate of ${name}`);
  return value;
}

function loadsOf(takeoff: readonly ExplainedNode[], material: string): number {
  const loads = takeoff.find(({ name }) => name === 'truck loads');
  return valueOf(loads?.inputs ?? [], `${material} loads`);
}
