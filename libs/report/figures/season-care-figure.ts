import type { Figure } from '../document/figure.js';
import { numberColumn, row, table, textColumn, type Table } from '../document/table.js';
import { columnValues } from './bar-frame.js';
import type { Series, StackedBars } from './bars.js';
import { stackedBarsDrawing } from './stacked-bars.js';
import { firstShort } from './supply-line.js';
import type { Value } from './values.js';
import { knownSum, valueText } from './values.js';

/** Load by year (or month) in layers, against a stepped line of what can be supplied. */
export interface SeasonCare {
  readonly title: string;
  readonly years: readonly (number | string)[];
  readonly series: readonly Series[];
  /** One value per year. */
  readonly supply: readonly Value[];
  /** Unit of all values, such as `Hours`. */
  readonly unit: string;
  /** Left out: `Supply`. */
  readonly supplyLabel?: string;
  /** Header of the first table column. Left out: `Year`. */
  readonly columnName?: string;
  /** Of the drawing, in points. Left out: 236. */
  readonly height?: number;
  /** Of the data table. Left out: compact. */
  readonly density?: Table['density'];
}

/**
 * Stacked bars against a stepped supply line, with alternate text and data table. Throws when a
 * series has not one value per year.
 */
export function seasonCareFigure(care: SeasonCare): Figure {
  const bars: StackedBars = {
    columns: care.years.map(String),
    series: care.series,
    supply: care.supply,
    supplyLabel: care.supplyLabel ?? 'Supply',
    unit: care.unit,
    ...(care.height === undefined ? {} : { height: care.height }),
  };
  requireFull(bars, care.title);
  return {
    kind: 'figure',
    title: care.title,
    alt: barsInWords(care.title, bars),
    drawing: stackedBarsDrawing(bars),
    table: barsTable(care, bars),
  };
}

function requireFull(bars: StackedBars, title: string): void {
  const count = bars.columns.length;
  const lengths = [...bars.series.map((series) => series.values.length), bars.supply.length];
  if (count === 0 || bars.series.length === 0) throw new RangeError(`"${title}" has no values`);
  if (lengths.some((length) => length !== count)) {
    throw new RangeError(
      `"${title}" needs ${count} values in each series, got ${lengths.join(', ')}`,
    );
  }
}

function barsInWords(title: string, bars: StackedBars): string {
  const last = bars.columns.length - 1;
  const [from, to] = [bars.columns[0] ?? '', bars.columns[last] ?? ''];
  const layers = bars.series.map((series) => series.label).join(', ');
  const short = firstShort(bars);
  return [
    `${title}. Stacked bars from ${from} to ${to}, in layers from the bottom: ${layers}.`,
    `The total goes from ${totalText(bars, 0)} to ${totalText(bars, last)} (${bars.unit}).`,
    short === undefined
      ? `It is nowhere above the stepped line "${bars.supplyLabel}".`
      : `It is first above the stepped line "${bars.supplyLabel}" in ${bars.columns[short] ?? ''}.`,
    'The table that follows has every value.',
  ].join(' ');
}

function totalText(bars: StackedBars, column: number): string {
  const { sum, complete } = knownSum(columnValues(bars, column));
  return complete ? valueText(sum) : `more than ${valueText(sum)}`;
}

function barsTable(care: SeasonCare, bars: StackedBars) {
  return table({
    caption: `${care.title}: values in ${care.unit.toLowerCase()}`,
    density: care.density ?? 'compact',
    columns: [
      textColumn(care.columnName ?? 'Year', 1),
      ...bars.series.map((series) => numberColumn(series.label)),
      numberColumn('Total'),
      numberColumn(bars.supplyLabel),
    ],
    rows: bars.columns.map((name, column) =>
      row(
        name,
        ...columnValues(bars, column).map(valueText),
        totalText(bars, column),
        valueText(bars.supply[column]),
      ),
    ),
  });
}
