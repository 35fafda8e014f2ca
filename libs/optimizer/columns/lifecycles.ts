import { yearAt, yearIndexOf } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { Placement } from '#domain/plan.js';
import type { CandidateSite } from '#domain/site.js';
import { placementPoints } from '#estimating/benefit-points/benefit-points.js';
import type { CampusCharges } from '#estimating/site-charges/campus-charges.js';
import { lifeOf } from '#estimating/site-charges/life.js';
import type { Lifecycle } from '#rules/columns.js';
import { freeOfWorks } from '#rules/construction/columns.js';
import { eligibleInYear } from '#rules/eligible-years/columns.js';
import { allowedByHand } from '#rules/hand-placements/columns.js';
import { possibleChanges } from '#rules/later-changes/columns.js';
import { secondHalfYears } from '#rules/phases/columns.js';
import { keepsFrozenYears } from '#rules/stability/columns.js';
import type { FiscalYear } from '#units/fiscal-year.js';
import { withoutDominated } from './dominated.js';

/** The lives among which a plan is sought: every possible one, without those that another always beats. */
export function possibleLifecycles(campus: Campus, charges: CampusCharges): Lifecycle[] {
  return livesByBeginning(campus, charges).flatMap((lives) => withoutDominated(campus, lives));
}

/**
 * Every life that some site may have, in order of site, type and year, each built at once before it is
 * built in halves, and unchanged before it is changed.
 */
export function everyLifecycle(campus: Campus, charges: CampusCharges): Lifecycle[] {
  return livesByBeginning(campus, charges).flat();
}

/** Lives in groups that are built alike and differ in what becomes of them later. */
function livesByBeginning(campus: Campus, charges: CampusCharges): Lifecycle[][] {
  return campus.candidates.flatMap((site) =>
    site.buildTypes.flatMap((buildType) =>
      Array.from({ length: campus.calendar.horizonYears }, (_, i) => yearAt(campus.calendar, i))
        .filter((year) => open({ campus, site, buildType }, year))
        .flatMap((year) => livesFrom({ campus, site, buildType, charges }, year)),
    ),
  );
}

interface Candidacy {
  readonly campus: Campus;
  readonly site: CandidateSite;
  readonly buildType: string;
}

function open({ campus, site, buildType }: Candidacy, year: FiscalYear): boolean {
  const yearIndex = yearIndexOf(campus.calendar, year);
  return (
    eligibleInYear(campus, { site, buildType, year }) &&
    allowedByHand(campus, { site: site.id, buildType, yearIndex }) &&
    freeOfWorks(campus, site.id, lifeOf(campus, site.id, year))
  );
}

/** Lives that begin in a year: at once or in halves, each with every later change or none. */
function livesFrom(of: Candidacy & { charges: CampusCharges }, year: FiscalYear): Lifecycle[][] {
  const { campus, site, buildType, charges } = of;
  const first = lifeOf(campus, site.id, year);
  const changes = possibleChanges(campus, { site, buildType, life: first });
  const seconds = secondHalfYears(campus, site, year).filter(
    (second) =>
      eligibleInYear(campus, { site, buildType, year: second }) &&
      freeOfWorks(campus, site.id, lifeOf(campus, site.id, second)),
  );
  const whole: Placement = { site: site.id, buildType, year };
  const built = [whole, ...seconds.map((secondHalf) => ({ ...whole, secondHalf }))];
  return built.map((placement) => {
    const placements = [placement, ...changes.map((change) => ({ ...placement, change }))];
    return placements
      .filter((p) => keepsFrozenYears(campus, p))
      .map((p) => lifecycleOf({ campus, site, charges }, p));
  });
}

/** The life that a placement is. */
export function lifecycleOf(
  { campus, site, charges }: { campus: Campus; site: CandidateSite; charges: CampusCharges },
  placement: Placement,
): Lifecycle {
  const parts = charges.parts(placement);
  return {
    site: site.id,
    buildType: placement.buildType,
    yearIndex: yearIndexOf(campus.calendar, placement.year),
    placement,
    parts,
    life: lifeOf(campus, site.id, placement.year),
    charges: charges.of(site.id, placement.buildType),
    benefit: placementPoints(campus, site, parts),
  };
}
