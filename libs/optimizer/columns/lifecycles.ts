import { yearAt } from '#domain/calendar.js';
import { buildType, type Campus } from '#domain/campus.js';
import { lifetimePoints, pointsPerYear } from '#estimating/benefit-points/benefit-points.js';
import type { CampusCharges } from '#estimating/site-charges/campus-charges.js';
import { lifeOf } from '#estimating/site-charges/life.js';
import type { Lifecycle } from '#rules/columns.js';
import { freeOfWorks } from '#rules/construction/columns.js';
import { eligibleInYear } from '#rules/eligible-years/columns.js';
import { allowedByHand } from '#rules/hand-placements/columns.js';

/** Every life that some site may have, in order of site, type and year. */
export function possibleLifecycles(campus: Campus, charges: CampusCharges): Lifecycle[] {
  return campus.candidates.flatMap((site) =>
    site.buildTypes.flatMap((typeId) => {
      const yearly = pointsPerYear(campus, site, buildType(campus, typeId));
      return Array.from({ length: campus.calendar.horizonYears }, (_, yearIndex) => yearIndex)
        .filter((yearIndex) => {
          const year = yearAt(campus.calendar, yearIndex);
          if (!eligibleInYear(campus, { site, buildType: typeId, year })) return false;
          if (!allowedByHand(campus, { site: site.id, buildType: typeId, yearIndex })) return false;
          return freeOfWorks(campus, site.id, lifeOf(campus, site.id, year));
        })
        .map((yearIndex) => {
          const life = lifeOf(campus, site.id, yearAt(campus.calendar, yearIndex));
          return {
            site: site.id,
            buildType: typeId,
            yearIndex,
            life,
            charges: charges.of(site.id, typeId),
            benefit: lifetimePoints(campus, yearly, life),
          };
        });
    }),
  );
}
