import type { Check } from '../check.js';

/** A site that must wait for another is built no sooner than the years apart after it. */
export const checkPrecedence: Check = (campus, plan) => {
  const yearOf = new Map(plan.decisions.placements.map((p) => [p.site, p.year]));
  const standing = new Set(campus.existing.map((s) => s.id));
  return campus.precedence.flatMap(({ before, after, yearsApart, reason }) => {
    const later = yearOf.get(after);
    if (later === undefined || standing.has(before)) return [];
    const first = yearOf.get(before);
    if (first !== undefined && later >= first + yearsApart) return [];
    const found =
      first === undefined ? `${before} is not built` : `${before} is built in FY${first}`;
    return [
      {
        rule: 'precedence',
        record: after,
        message: `${after} is built in FY${later} and must follow ${before} by ${yearsApart} years or more; ${found} (${reason})`,
      },
    ];
  });
};
