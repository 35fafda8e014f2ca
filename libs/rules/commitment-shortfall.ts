import type { Campus } from '#domain/campus.js';
import type { Commitment, CommitmentTest } from '#domain/commitment.js';
import type { Plan } from '#domain/plan.js';
import { areaShortfall } from './area/check.js';
import { namedSiteShortfall } from './named-site/check.js';
import { earlyPositions } from './no-new-positions-before/check.js';
import { unservedShortfall } from './no-unserved-care/check.js';
import { otherTypesBuilt } from './only-build-types/check.js';
import { sitesEachYearShortfall } from './sites-each-year/check.js';
import { zoneShortfall } from './zone-balance/check.js';
import type { Shortfall } from './shortfall.js';

/** By how much a plan falls short of a promise, in the promise's own unit. */
export function commitmentShortfall(campus: Campus, plan: Plan, commitment: Commitment): Shortfall {
  return testShortfall(campus, plan, commitment.test);
}

function testShortfall(campus: Campus, plan: Plan, test: CommitmentTest): Shortfall {
  switch (test.kind) {
    case 'sites-each-year':
      return sitesEachYearShortfall(campus, plan, test);
    case 'named-site':
      return namedSiteShortfall(campus, plan, test);
    case 'area':
      return areaShortfall(campus, plan, test);
    case 'no-new-positions-before':
      return earlyPositions(campus, plan, test);
    case 'no-unserved-care':
      return unservedShortfall(campus, plan, test);
    case 'only-build-types':
      return otherTypesBuilt(campus, plan, test);
    case 'zone-balance':
      return zoneShortfall(campus, plan, test);
  }
}
