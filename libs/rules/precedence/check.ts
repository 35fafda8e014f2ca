import type { Check } from '../check.js';
import { finishedIn } from '../counting.js';

/** A site that must wait for another is begun no sooner than the years apart after the whole of it. */
export const checkPrecedence: Check = (campus, plan) => {
  const placed = new Map(plan.decisions.placements.map((p) => [p.site, p]));
  const standing = new Set(campus.existing.map((s) => s.id));
  return campus.precedence.flatMap(({ before, after, yearsApart, reason }) => {
    const later = placed.get(after)?.year;
    if (later === undefined || standing.has(before)) return [];
    const earlier = placed.get(before);
    const first = earlier && finishedIn(earlier);
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
