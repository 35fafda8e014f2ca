import type { Check } from '../check.js';

/** At most one site of an exclusive group is ever built. */
export const checkExclusiveGroup: Check = (campus, plan) =>
  campus.exclusiveGroups.flatMap((group) => {
    const built = plan.decisions.placements.filter((p) => group.sites.includes(p.site));
    if (new Set(built.map((p) => p.site)).size <= 1) return [];
    return [
      {
        rule: 'exclusive-group',
        record: group.id,
        message: `only one of ${group.sites.join(', ')} may be built (${group.reason}); the plan builds ${built.map((p) => p.site).join(', ')}`,
      },
    ];
  });
