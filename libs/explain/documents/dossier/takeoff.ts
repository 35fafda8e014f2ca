import type { BuildType } from '#domain/build-type.js';
import { COMPONENTS } from '#domain/component.js';
import { COMPONENT_WORDS } from '#domain/component-words.js';
import type { Campus } from '#domain/campus.js';
import type { CandidateSite } from '#domain/site.js';
import { coefficient } from '#estimating/defaults/coefficients.js';
import { overridesAt } from '#estimating/defaults/overrides-at.js';
import type { PlacedPart } from '#estimating/site-charges/placed-parts.js';
import { FINE_PARTS } from '#estimating/site-charges/type-profile.js';
import { sheetFactor } from '#estimating/takeoff/cardboard.js';
import { componentAreas } from '#estimating/takeoff/component-areas.js';
import { poundsOf } from '#estimating/takeoff/layers.js';
import { loadsOf } from '#estimating/takeoff/loads.js';
import { mulchTakeoff } from '#estimating/takeoff/mulch-takeoff.js';
import { centiToYards } from '#units/centiyards.js';
import { valueOr } from '#units/known.js';
import type { ComponentArea, SiteTakeoff } from './site-dossier.js';

export interface BuiltSite {
  readonly site: CandidateSite;
  readonly type: BuildType;
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

/**
 * Compost is what the plan is charged; loads are of each material apart, and of each half apart, since
 * halves are built in different years.
 */
export function takeoffOf(
  campus: Campus,
  built: BuiltSite,
  parts: readonly PlacedPart[],
): SiteTakeoff {
  const each = parts.map((part) => partTakeoff(campus, built, part));
  const sum = (of: (one: PartTakeoff) => number) => each.reduce((all, one) => all + of(one), 0);
  const { rootProtectedShare: roots } = built.site.facts;
  return {
    compostCuYd: sum((one) => one.compostCuYd),
    chipsCuYd: sum((one) => one.chipsCuYd),
    compostLoads: sum((one) => one.compostLoads),
    chipLoads: sum((one) => one.chipLoads),
    pounds: sum((one) => one.pounds),
    netCoverSqFt: sum((one) => one.netCoverSqFt),
    cardboardSqFt: sum((one) => one.cardboardSqFt),
    topDressCuYdPerYear: sum((one) => one.topDressCuYdPerYear),
    rootProtectedShare: roots.known ? roots.value : null,
  };
}

type PartTakeoff = Omit<SiteTakeoff, 'rootProtectedShare'>;

function partTakeoff(
  campus: Campus,
  { site, type }: BuiltSite,
  { charges: of, share }: PlacedPart,
): PartTakeoff {
  const own = overridesAt(campus, site);
  const layers = mulchTakeoff(
    {
      areasSqFt: componentAreas(site.areaSqFt * share, type.shares),
      compostInches: type.compostInches,
      chipInches: type.chipInches,
      waste: campus.materialWaste,
      rootProtectedShare: valueOr(site.facts.rootProtectedShare, 0),
      barrier: 'cardboard-sheets',
    },
    own,
  );
  const compostCuYd = centiToYards(of.buildCompost);
  const pounds = {
    compost: poundsOf(compostCuYd, coefficient('density.compost', own)),
    chips: poundsOf(layers.chipsCuYd, coefficient('density.wood-chips', own)),
  };
  const truck = {
    boxCuYd: coefficient('truck.box', own),
    payloadLb: coefficient('truck.payload', own),
  };
  const lapped = sheetFactor({
    lengthFt: coefficient('cardboard.sheet-length', own),
    widthFt: coefficient('cardboard.sheet-width', own),
    lapInches: coefficient('cardboard.lap', own),
  });
  return {
    compostCuYd,
    chipsCuYd: layers.chipsCuYd,
    compostLoads: loadsOf({ cubicYards: compostCuYd, pounds: pounds.compost }, truck),
    chipLoads: loadsOf({ cubicYards: layers.chipsCuYd, pounds: pounds.chips }, truck),
    pounds: pounds.compost + pounds.chips,
    netCoverSqFt: layers.barrierSqFt,
    cardboardSqFt: layers.barrierSqFt * lapped,
    topDressCuYdPerYear: (of.areaSqFt * of.profile.topDress) / FINE_PARTS,
  };
}
