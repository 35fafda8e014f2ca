import { hoursInWords, percentInWords } from '#units/in-words.js';
import { wantedHours } from '../../overview/labor/season-rows.js';
import type { LimitRow, SeasonRow } from '../../overview/plan-overview.js';

/** The first year whose hours, all seasons added up, are more than those already there can give. */
export function annualHours(rows: readonly SeasonRow[]): LimitRow {
  const years = [...new Set(rows.map(({ year }) => year))].map((year) => {
    const own = rows.filter((row) => row.year === year);
    const wanted = own.reduce((sum, row) => sum + wantedHours(row), 0);
    return { year, wanted, supply: own.reduce((sum, row) => sum + row.supplyNow, 0) };
  });
  const short = years.find(({ wanted, supply }) => wanted > supply);
  const resource = 'hours of the whole year';
  if (short) {
    const { year, wanted, supply } = short;
    return {
      ...{ resource, year, label: year, shortBy: wanted - supply, unit: 'hours' },
      figures: [
        { what: 'work', value: wanted, unit: 'hours' },
        { what: 'there', value: supply, unit: 'hours' },
      ],
      sentence: `All work of ${year} takes ${hoursInWords(wanted)}; those already there have ${hoursInWords(supply)} over the year.`,
    };
  }
  const most = years.reduce((a, b) => (b.wanted / b.supply > a.wanted / a.supply ? b : a));
  return {
    ...{ resource, year: null, label: null, shortBy: null, unit: 'hours' },
    figures: [
      { what: 'tightest', value: most.year, unit: 'label' },
      { what: 'used', value: most.wanted / most.supply, unit: 'share' },
      { what: 'there', value: most.supply, unit: 'hours' },
    ],
    sentence: `Enough in every year. Tightest: ${most.year}, ${percentInWords(most.wanted / most.supply)} of ${hoursInWords(most.supply)}.`,
  };
}
