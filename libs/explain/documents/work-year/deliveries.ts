import type { DeliveryWindow, WorkSite } from './work-year.js';

const DAY = 86_400_000;
const WEEK = 7 * DAY;

/** Weeks left free as a season opens, when people come back, and as it ends, when the ground may freeze. */
const OPENING_WEEKS = 3;
const CLOSING_WEEKS = 2;

/** The ISO dates between which a season runs: its first day, and the first day after it. */
export interface SeasonDays {
  readonly opens: string;
  readonly closes: string;
}

/**
 * A window for each site and material, Monday to Friday, one site after the other within the season:
 * compost first, chips in the week after. A site with no week of its own shares one.
 */
export function deliveryWindows(
  sites: readonly WorkSite[],
  { opens, closes }: SeasonDays,
): DeliveryWindow[] {
  const first = mondayFrom(Date.parse(opens)) + OPENING_WEEKS * WEEK;
  const weeks = Math.max(1, Math.floor((Date.parse(closes) - CLOSING_WEEKS * WEEK - first) / WEEK));
  const weekOf = (place: number) => first + Math.min(weeks - 1, Math.floor(place)) * WEEK;
  const step = weeks / Math.max(1, sites.length);
  return sites.flatMap(({ site, takeoff }, place) => [
    ...windowOf({
      site,
      material: 'Compost',
      cuYd: takeoff.compostCuYd,
      loads: takeoff.compostLoads,
      ...days(weekOf(place * step)),
    }),
    ...windowOf({
      site,
      material: 'Wood chips',
      cuYd: takeoff.chipsCuYd,
      loads: takeoff.chipLoads,
      ...days(weekOf(place * step + 1)),
    }),
  ]);
}

function windowOf(window: DeliveryWindow): DeliveryWindow[] {
  return window.loads > 0 ? [window] : [];
}

function days(monday: number): { from: string; to: string } {
  return { from: isoDate(monday), to: isoDate(monday + 4 * DAY) };
}

/** The first Monday on or after a day. */
function mondayFrom(day: number): number {
  return day + ((8 - new Date(day).getUTCDay()) % 7) * DAY;
}

function isoDate(day: number): string {
  return new Date(day).toISOString().slice(0, 10);
}
