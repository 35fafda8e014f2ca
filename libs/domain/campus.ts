import type { FiscalYear } from '#units/fiscal-year.js';
import type { BenefitSpec } from './benefit.js';
import type { BuildType } from './build-type.js';
import type { Calendar } from './calendar.js';
import type { Commitment } from './commitment.js';
import type { CareCoefficients, Component } from './component.js';
import type { CompostSupply } from './compost.js';
import type { LaborPool, PositionType, WorkDay } from './labor.js';
import type { MeasuredValue } from './measured.js';
import type { LaterChange } from './later-change.js';
import type { Escalation, Fund, StandingCost } from './money.js';
import type { PublishedPlan } from './published-plan.js';
import type {
  CandidateSite,
  ConstructionConflict,
  ExclusiveGroup,
  ExistingSite,
  Precedence,
  Rings,
} from './site.js';
import type { Weather } from './weather.js';

/** A placement set by hand: the site is built then, or never then. */
export interface HandPlacement {
  readonly site: string;
  readonly kind: 'fixed' | 'forbidden';
  /** Left out on `forbidden`: in no year at all. */
  readonly year?: FiscalYear;
  /** Left out: any type the site allows. */
  readonly buildType?: string;
  readonly reason: string;
}

export interface Zone {
  readonly id: string;
  readonly name: string;
  readonly boundary?: Rings;
}

/** Everything that a plan is made from. Inputs only; no plan is stored in it. */
export interface Campus {
  readonly id: string;
  readonly name: string;
  /** Name of the landscape program. */
  readonly program: string;
  /** The day the data was last confirmed. ISO date. */
  readonly dataDate: string;
  readonly calendar: Calendar;
  readonly zones: readonly Zone[];
  readonly candidates: readonly CandidateSite[];
  readonly existing: readonly ExistingSite[];
  readonly buildTypes: readonly BuildType[];
  readonly care: Readonly<Record<Component, CareCoefficients>>;
  readonly pools: readonly LaborPool[];
  readonly workDays: readonly WorkDay[];
  readonly positions: readonly PositionType[];
  readonly funds: readonly Fund[];
  readonly standingCosts: readonly StandingCost[];
  readonly escalation: Escalation;
  readonly compost: CompostSupply;
  /** Extra share of compost and chips ordered for losses, 0 or more. */
  readonly materialWaste: number;
  readonly construction: readonly ConstructionConflict[];
  /** Works at least this certain bar building outright, in percent. */
  readonly hardAtCertaintyPercent: number;
  /** Years after planting in which a site has repaid its capital. */
  readonly paybackYears: number;
  readonly precedence: readonly Precedence[];
  readonly exclusiveGroups: readonly ExclusiveGroup[];
  /** In order of rank: an earlier intended commitment is held before a later one. */
  readonly commitments: readonly Commitment[];
  readonly benefit: BenefitSpec;
  readonly handPlacements: readonly HandPlacement[];
  /** Ways in which sites may be simplified or returned. Left out: none. */
  readonly laterChanges?: readonly LaterChange[];
  /** Left out: nothing was published before. */
  readonly published?: PublishedPlan;
  /** Weight of each suitability criterion in percent, by its id; they total 100. Left out: the defaults. */
  readonly suitabilityWeights?: Readonly<Record<string, number | undefined>>;
  /** Left out: not recorded, so that irrigation is unknown. */
  readonly weather?: Weather;
  /** Measured coefficients that hold for the whole campus. Left out: none. */
  readonly overrides?: readonly MeasuredValue[];
}

export function candidate(campus: Campus, id: string): CandidateSite {
  const site = campus.candidates.find((s) => s.id === id);
  if (!site) throw new RangeError(`no candidate site ${id} in ${campus.name}`);
  return site;
}

/** A later change of a campus by its id. Throws for one that it does not have. */
export function laterChange(campus: Campus, id: string): LaterChange {
  const change = campus.laterChanges?.find((c) => c.id === id);
  if (!change) throw new RangeError(`no later change ${id} in ${campus.name}`);
  return change;
}

export function buildType(campus: Campus, id: string): BuildType {
  const type = campus.buildTypes.find((t) => t.id === id);
  if (!type) throw new RangeError(`no build type ${id} in ${campus.name}`);
  return type;
}
