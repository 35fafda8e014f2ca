import type { Campus } from '#domain/campus.js';
import type { Decisions, Plan } from '#domain/plan.js';
import type { CampusCharges } from '#estimating/site-charges/campus-charges.js';
import { allocateCompost } from './compost.js';
import { allocateLabor } from './labor.js';
import { allocateMoney } from './money.js';
import type { Shortage } from './shortage.js';

export interface CompletedPlan {
  readonly plan: Plan;
  /** Empty: every hour, dollar and cubic yard that must be there is there. */
  readonly shortages: readonly Shortage[];
}

/** Works out a whole plan from its decisions, in whole units. */
export function completePlan(
  campus: Campus,
  decisions: Decisions,
  charges: CampusCharges,
): CompletedPlan {
  const sorted = sortDecisions(decisions);
  const labor = allocateLabor(campus, sorted, charges);
  const compost = allocateCompost(campus, sorted, charges);
  const money = allocateMoney(campus, sorted, charges);
  return {
    plan: {
      decisions: sorted,
      labor: labor.labor,
      unserved: labor.unserved,
      spending: money.spending,
      compost: compost.compost,
    },
    shortages: [...labor.shortages, ...compost.shortages, ...money.shortages],
  };
}

/** One order for the same decisions, so that equal plans are equal texts. */
export function sortDecisions(decisions: Decisions): Decisions {
  const by =
    <T>(...keys: ((t: T) => number | string)[]) =>
    (a: T, b: T) => {
      for (const key of keys) {
        const [x, y] = [key(a), key(b)];
        if (x !== y) return x < y ? -1 : 1;
      }
      return 0;
    };
  return {
    placements: [...decisions.placements].sort(
      by(
        (p) => p.year,
        (p) => p.site,
      ),
    ),
    hires: [...decisions.hires].sort(
      by(
        (h) => h.year,
        (h) => h.position,
      ),
    ),
    workDays: [...decisions.workDays].sort(
      by(
        (w) => w.year,
        (w) => w.workDay,
      ),
    ),
    purchases: [...decisions.purchases].sort(
      by(
        (p) => p.season,
        (p) => p.grade ?? '',
      ),
    ),
  };
}
