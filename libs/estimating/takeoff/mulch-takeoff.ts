import { COMPONENTS, type Component } from '#domain/component.js';
import { coefficient, type Overrides } from '../defaults/coefficients.js';
import { layerCuYd } from './layers.js';
import { meanInches } from './root-exclusion.js';

export type Barrier = 'cardboard-sheets' | 'cardboard-rolls' | 'none';

export interface MulchDesign {
  readonly areasSqFt: Readonly<Record<Component, number>>;
  readonly compostInches: Readonly<Record<Component, number>>;
  readonly chipInches: Readonly<Record<Component, number>>;
  readonly waste: number;
  /** Part of the site within root protection, 0 to 1, taken as even over the components. */
  readonly rootProtectedShare: number;
  readonly barrier: Barrier;
}

export interface MulchTakeoff {
  readonly compostCuYd: number;
  readonly chipsCuYd: number;
  /** Net area to cover; 0 without a barrier. */
  readonly barrierSqFt: number;
}

/**
 * Compost, chips and barrier of a site. Within root protection compost is held to what roots may carry
 * and chips to the arborists' depth. Without a barrier the chips are laid at least as deep as
 * smothering by chips alone needs: one method of several, since opinion on cardboard is divided.
 */
export function mulchTakeoff(design: MulchDesign, overrides: Overrides = {}): MulchTakeoff {
  const rooted = {
    compost: coefficient('takeoff.root-protection-compost-inches', overrides),
    chips: coefficient('takeoff.root-protection-chip-inches', overrides),
  };
  const alone = coefficient('takeoff.chip-inches-without-barrier', overrides);
  let compostCuYd = 0;
  let chipsCuYd = 0;
  let mulchedSqFt = 0;
  for (const component of COMPONENTS) {
    const areaSqFt = design.areasSqFt[component];
    const chipDesign = design.chipInches[component];
    const deeper =
      design.barrier === 'none' && chipDesign > 0 ? Math.max(chipDesign, alone) : chipDesign;
    const compost = { designInches: design.compostInches[component], mostInches: rooted.compost };
    const chips = { designInches: deeper, mostInches: rooted.chips };
    compostCuYd += volume(design, { areaSqFt, ...compost });
    chipsCuYd += volume(design, { areaSqFt, ...chips });
    if (chipDesign > 0) mulchedSqFt += areaSqFt;
  }
  return { compostCuYd, chipsCuYd, barrierSqFt: design.barrier === 'none' ? 0 : mulchedSqFt };
}

interface LayerLimits {
  readonly areaSqFt: number;
  readonly designInches: number;
  readonly mostInches: number;
}

function volume(design: MulchDesign, layer: LayerLimits): number {
  const depthInches = meanInches({ ...layer, protectedShare: design.rootProtectedShare });
  return layerCuYd({ areaSqFt: layer.areaSqFt, depthInches, waste: design.waste });
}
