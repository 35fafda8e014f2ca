import { yearIndexOf } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { Decisions, Placement } from '#domain/plan.js';
import type { ConstructionConflict } from '#domain/site.js';
import { recurringSupplies } from '#estimating/plan-needs/money-needs.js';
import type { CampusCharges } from '#estimating/site-charges/campus-charges.js';
import { existingLife, lifeOf, type Life } from '#estimating/site-charges/life.js';
import {
  CARE_CLASSES,
  FINE_PER_HUNDREDTH,
  SETTLED_AGE,
} from '#estimating/site-charges/type-profile.js';
import type { SiteCharges } from '#estimating/site-charges/site-charges.js';
import { cents, type Cents } from '#units/cents.js';

/** A piece of ground that is planted at once, with what it asks for, ready to be added up quickly. */
export interface Piece {
  readonly site: string;
  readonly buildType: string;
  /** Place of its placement in the plan's order; -1 for a site that stands already. */
  readonly placement: number;
  readonly charges: SiteCharges;
  readonly changeCost: Cents;
  readonly life: Life;
  /** Hundredths of an hour at [(age - 1) x seasons of a year + order] x care classes. */
  readonly care: Float64Array;
  /** Supplies by year in dollars of the price year, while it ends as planned. */
  readonly supplies: readonly Cents[];
}

/** Every piece of ground of a plan, existing sites first, then in the plan's order. */
export function piecesOf(
  campus: Campus,
  { placements }: Decisions,
  charges: CampusCharges,
): Piece[] {
  const standing = campus.existing.map((site) =>
    pieceOf(campus, {
      ...{ site: site.id, buildType: site.buildType, placement: -1, changeCost: cents(0) },
      ...{ charges: charges.of(site.id, site.buildType), life: existingLife(campus, site) },
    }),
  );
  const planned = placements.flatMap((placement, place) =>
    placedPieces(campus, { placement, place }, charges),
  );
  return [...standing, ...planned];
}

/** The pieces of one placement, with its place in the plan. */
export function placedPieces(
  campus: Campus,
  of: { readonly placement: Placement; readonly place: number },
  charges: CampusCharges,
): Piece[] {
  const { site, buildType } = of.placement;
  return charges.parts(of.placement).map(({ charges: asks, changeCost, life }) =>
    pieceOf(campus, {
      ...{ site, buildType, placement: of.place, charges: asks, changeCost, life },
    }),
  );
}

function pieceOf(campus: Campus, part: Omit<Piece, 'care' | 'supplies'>): Piece {
  const care = careTable(campus, part.charges);
  return { ...part, care, supplies: recurringSupplies(campus, [part]) };
}

function careTable(campus: Campus, { areaSqFt, profile }: SiteCharges): Float64Array {
  const perYear = campus.calendar.seasons.length;
  const table = new Float64Array(SETTLED_AGE * perYear * CARE_CLASSES.length);
  let at = 0;
  for (let age = 1; age <= SETTLED_AGE; age++) {
    for (let order = 0; order < perYear; order++) {
      for (const c of CARE_CLASSES) {
        table[at++] = (areaSqFt * profile.care(c, age, order)) / FINE_PER_HUNDREDTH;
      }
    }
  }
  return table;
}

/** When a piece ends if these works come: as planned, unless the planned end was that of works. */
export function endsWith(
  campus: Campus,
  piece: Piece,
  works: readonly ConstructionConflict[],
): number {
  const { life, site } = piece;
  const planned = worksEnd(campus, site, life.planted);
  if (life.ends < planned) return life.ends;
  return worksEnd({ ...campus, construction: works }, site, life.planted);
}

/** First season of the first works on a site after a season in which it was planted; Infinity without. */
function worksEnd(campus: Campus, site: string, planted: number): number {
  const { calendar } = campus;
  return campus.construction
    .filter((c) => c.sites.includes(site))
    .map((c) => yearIndexOf(calendar, c.from) * calendar.seasons.length)
    .filter((start) => start > planted)
    .reduce((first, start) => Math.min(first, start), Infinity);
}

/** Whether works hold the ground in a year in which it is prepared or planted. */
export function isTaken(
  campus: Campus,
  placement: Pick<Placement, 'site' | 'year'>,
  works: readonly ConstructionConflict[],
): boolean {
  const { planted } = lifeOf(campus, placement.site, placement.year);
  const first = yearIndexOf(campus.calendar, placement.year);
  const last = Math.floor(planted / campus.calendar.seasons.length);
  return works.some(
    (c) =>
      c.sites.includes(placement.site) &&
      yearIndexOf(campus.calendar, c.from) <= last &&
      yearIndexOf(campus.calendar, c.to) >= first,
  );
}
