import { plantIndex, seasonInstance, yearIndexOf } from '#domain/calendar.js';
import type { Placement } from '#domain/plan.js';
import { hoursInWords, percentInWords } from '#units/in-words.js';
import type { Ground } from '../ground.js';
import { wantedHours } from '../labor/season-rows.js';
import type { SeasonRow } from '../plan-overview.js';
import type { Weighed } from './weighed.js';

/** Below this share of hours left free, illness or rain would break the season: planning judgement. */
const THIN = 0.15;

/** What is left of the people already there in the site's second main care season. */
export function roomReason(
  ground: Ground,
  placement: Placement,
  seasons: readonly SeasonRow[],
): Weighed[] {
  const row = seasons[secondBusySeason(ground, placement)];
  if (!row || row.supplyNow <= 0) return [];
  const free = row.supplyNow - wantedHours(row);
  const share = Math.max(0, free / row.supplyNow);
  const sentence =
    row.shortNow > 0
      ? `In its second ${row.season} ${hoursInWords(row.shortNow)} are short without positions that are only proposed.`
      : `In its second ${row.season} those already there keep ${hoursInWords(Math.max(0, free))} free (${percentInWords(share)}).`;
  return [
    {
      side: share >= THIN && row.shortNow === 0 ? 'for' : 'against',
      rank: 'rule',
      size: 0.5,
      reason: {
        sentence,
        value: row.shortNow > 0 ? row.shortNow : Math.max(0, free),
        unit: 'hours',
        figures: row.shortNow > 0 ? [] : [{ what: 'kept free', value: share, unit: 'share' }],
        source: 'hours of this plan',
      },
    },
  ];
}

/** Running index of the second main care season after planting, in which the site is in year 2. */
function secondBusySeason({ campus, busy }: Ground, { year }: Placement): number {
  const { calendar } = campus;
  const planted = plantIndex(calendar, yearIndexOf(calendar, year));
  const first = planted - seasonInstance(calendar, planted).order + busy.order;
  const perYear = calendar.seasons.length;
  return (first >= planted ? first : first + perYear) + perYear;
}
