import { wantedHours } from '../labor/season-rows.js';
import { hoursInWords, percentInWords, wholeInWords } from '#units/in-words.js';
import type { LimitRow, SeasonRow } from '../plan-overview.js';

/** Per season of the year, the first time that those already there cannot do all its work. */
export function laborLimits(rows: readonly SeasonRow[]): LimitRow[] {
  const names = [...new Set(rows.map(({ season }) => season))];
  return names.map((name) =>
    laborLimit(
      name,
      rows.filter(({ season }) => season === name),
    ),
  );
}

function laborLimit(name: string, rows: readonly SeasonRow[]): LimitRow {
  const resource = `${name} hours`;
  const short = rows.find(({ shortNow }) => shortNow > 0);
  if (!short) return { resource, ...NEVER, ...tightest(name, rows) };
  const wanted = wantedHours(short);
  const served = wanted - short.shortNow;
  return {
    resource,
    year: short.year,
    label: short.label,
    shortBy: short.shortNow,
    unit: 'hours',
    figures: [
      { what: 'work', value: wanted, unit: 'hours' },
      { what: 'can be done', value: served, unit: 'hours' },
    ],
    sentence: `Work takes ${hoursInWords(wanted)}; those already there can do ${wholeInWords(served)}.${short.afterHorizon ? AFTER : ''}`,
  };
}

const NEVER = { year: null, label: null, shortBy: null, unit: 'hours' } as const;
const AFTER = ' That is after the last year in which the plan builds.';

function tightest(
  name: string,
  rows: readonly SeasonRow[],
): Pick<LimitRow, 'figures' | 'sentence'> {
  const use = (row: SeasonRow) => (row.supplyNow > 0 ? wantedHours(row) / row.supplyNow : 0);
  const most = rows.reduce((a, b) => (use(b) > use(a) ? b : a));
  if (most.supplyNow === 0) return { figures: [], sentence: `No work falls in any ${name}.` };
  return {
    figures: [
      { what: 'tightest', value: most.label, unit: 'label' },
      { what: 'used', value: use(most), unit: 'share' },
      { what: 'there', value: most.supplyNow, unit: 'hours' },
    ],
    sentence:
      `Enough with those already there. Tightest: ${most.label}, ` +
      `${percentInWords(use(most))} of ${hoursInWords(most.supplyNow)}.`,
  };
}
