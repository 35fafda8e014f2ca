import type { Campus } from '#domain/campus.js';
import type { CompostGrade } from '#domain/compost.js';
import type { PositionType, WorkDay } from '#domain/labor.js';
import type { Placement } from '#domain/plan.js';
import type { CampusCharges } from '#estimating/site-charges/campus-charges.js';
import type { Life } from '#estimating/site-charges/life.js';
import type { SiteCharges } from '#estimating/site-charges/site-charges.js';
import type { PlacedPart } from '#estimating/site-charges/placed-parts.js';
import type { TypeProfile } from '#estimating/site-charges/type-profile.js';
import { groupBy } from '#units/group-by.js';
import type { MilliPoints } from '#units/points.js';
import type { Term, Variable } from '#mip/model.js';

/** A whole life that a site may have: what it becomes, when, in which halves, and what becomes of it later. */
export interface Lifecycle {
  readonly site: string;
  readonly buildType: string;
  /** Of the whole site, or of its first half. */
  readonly yearIndex: number;
  /** All that the life decides. */
  readonly placement: Placement;
  /** Its pieces of ground, each with what it asks for and when. */
  readonly parts: readonly PlacedPart[];
  /** Of the piece that is built first. */
  readonly life: Life;
  /** Of the whole site as it is built. */
  readonly charges: SiteCharges;
  readonly benefit: MilliPoints;
}

/** 1 where the site has this life. */
export interface LifecycleColumn extends Lifecycle {
  readonly variable: Variable;
}

/**
 * Ground of one build type with one planting season and one end: it ages as one, so its care and
 * top-dressing are written once for all its sites.
 */
export interface CohortColumn {
  readonly life: Life;
  readonly profile: TypeProfile;
  /** Thousands of square feet. */
  readonly variable: Variable;
  /** The most that it can be: every site that has such a life. */
  readonly mostThousands: number;
}

/** How many positions of a type start in a year. */
export interface HireColumn {
  readonly position: PositionType;
  readonly yearIndex: number;
  readonly variable: Variable;
}

/** How many work days of a kind are held in a year. */
export interface WorkDayColumn {
  readonly day: WorkDay;
  readonly yearIndex: number;
  readonly variable: Variable;
}

/** Whole cubic yards of compost of one grade bought in a season. */
export interface PurchaseColumn {
  readonly season: number;
  readonly grade: CompostGrade;
  readonly variable: Variable;
}

/** The whole-number columns of a model, with what each stands for. */
export interface Columns {
  readonly campus: Campus;
  readonly charges: CampusCharges;
  readonly lifecycles: readonly LifecycleColumn[];
  readonly cohorts: readonly CohortColumn[];
  readonly hires: readonly HireColumn[];
  readonly workDays: readonly WorkDayColumn[];
  readonly purchases: readonly PurchaseColumn[];
}

/** The sum of the lifecycles that a test picks, each once. */
export function countTerms(columns: Columns, picks: (l: LifecycleColumn) => boolean): Term[] {
  return onceEach(columns.lifecycles.filter(picks));
}

/** The sum of some lifecycles, each once. */
export function onceEach(lifecycles: readonly LifecycleColumn[]): Term[] {
  return lifecycles.map(({ variable }) => ({ variable, coefficient: 1 }));
}

/** Lifecycles by site id, in the order of the columns. */
export function bySite(columns: Columns): Map<string, LifecycleColumn[]> {
  return groupBy(columns.lifecycles, ({ site }) => site);
}
