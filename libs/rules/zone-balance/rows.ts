import { lastBuildYear } from '#domain/calendar.js';
import type { CommitmentRows } from '../test-rows.js';
import { countTerms } from '../columns.js';
import { standsThrough } from '../counting.js';
import { slackTerms } from '../slack.js';

/**
 * Every zone has its least number of sites by the horizon.
 *
 *     existing[z] + sum over lives l in zone z  of  x[l]  +  short[z]  >=  least     for each zone z
 */
export const addZoneRows: CommitmentRows<'zone-balance'> = (draft, columns, { test, slack }) => {
  const { campus } = columns;
  const zoneOf = new Map(campus.candidates.map((s) => [s.id, s.zone]));
  return campus.zones.flatMap((zone) => {
    const existing = campus.existing.filter((s) => s.zone === zone.id).length;
    const missing = test.leastPerZone - existing;
    if (missing <= 0) return [];
    const label = `zone-balance ${zone.id}`;
    const short = slackTerms(draft, slack, { label, upper: missing });
    const built = countTerms(
      columns,
      (l) =>
        zoneOf.get(l.site) === zone.id &&
        (test.returnedCounts || standsThrough(campus, l.placement, lastBuildYear(campus.calendar))),
    );
    draft.addRow({ label, terms: [...built, ...short], atLeast: missing });
    return short;
  });
};
