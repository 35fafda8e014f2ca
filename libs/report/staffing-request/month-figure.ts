import type {
  StaffingMonth,
  StaffingRequest,
} from '#explain/documents/staffing/staffing-request.js';
import type { Hatch } from '../document/drawing.js';
import type { Figure } from '../document/figure.js';
import type { Series } from '../figures/bars.js';
import { seasonCareFigure } from '../figures/season-care-figure.js';

const HEIGHT = 126;

/** Hours of each month of the year shown against the people already there. */
export function monthFigure({ year, months }: StaffingRequest): Figure {
  const series = (label: string, hatch: Hatch, of: (month: StaffingMonth) => number): Series => ({
    label,
    hatch,
    values: months.map((month) => Math.round(of(month))),
  });
  return seasonCareFigure({
    title: `Hours by month in ${year}, against people already there`,
    years: months.map(({ label }) => short(label)),
    columnName: 'Month',
    unit: 'Hours',
    supplyLabel: 'People there',
    height: HEIGHT,
    density: 'dense',
    series: [
      series('Food care, harvest', 'diagonal', ({ careFood }) => careFood),
      series('Other care', 'light', ({ careOther }) => careOther),
      series('Preparing, planting', 'dark', ({ build }) => build),
      series('Leading work days', 'cross', ({ lead }) => lead),
    ],
    supply: months.map(({ people }) => Math.round(people)),
  });
}

/** `Jun 2041` for June 2041. */
function short(label: string): string {
  const [month = '', year = ''] = label.split(' ');
  return `${month.slice(0, 3)} ${year}`;
}
