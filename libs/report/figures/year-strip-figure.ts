import type { Figure } from '../document/figure.js';
import { numberColumn, row, table, textColumn } from '../document/table.js';
import { BAND_FILLS, shareText } from './band-fills.js';
import { legend } from './legend.js';
import { MARK_LOOKS, markText } from './strip-marks.js';
import { stripRows } from './strip-rows.js';
import type { MarkState, YearStrip } from './year-strip.js';
import { firstLimit } from './year-strip.js';

const WIDTH = 468;

/**
 * The strip of all years: one mark per site, and under it a thin band for each limit that
 * darkens as the limit comes near. Throws when a band has not one share per year.
 */
export function yearStripFigure(strip: YearStrip): Figure {
  requireFull(strip);
  const rows = stripRows(strip, WIDTH);
  const marks = legend(looksInUse(strip), WIDTH, rows.height + 7);
  const fills = strip.bands.length === 0 ? [] : fillsInUse(strip);
  const bands = legend(fills, WIDTH, rows.height + 7 + marks.height);
  return {
    kind: 'figure',
    title: strip.title,
    alt: stripInWords(strip),
    drawing: {
      width: WIDTH,
      height: rows.height + 7 + marks.height + bands.height,
      shapes: [...rows.shapes, ...marks.shapes, ...bands.shapes],
    },
    table: stripTable(strip),
  };
}

/** A key to what is drawn; a planned site explains the marks even where there is none. */
function looksInUse({ marks }: YearStrip) {
  const states = Object.keys(MARK_LOOKS) as MarkState[];
  return states
    .filter((state) => state === 'planned' || marks.some((mark) => mark.state === state))
    .map((state) => MARK_LOOKS[state]);
}

/** The whole scale of known shares, and the fill for unknown ones where there are any. */
function fillsInUse({ bands }: YearStrip) {
  const { unknown, ...known } = BAND_FILLS;
  const someUnknown = bands.some(({ shares }) => shares.includes(null));
  return [...Object.values(known), ...(someUnknown ? [unknown] : [])];
}

function requireFull({ title, years, bands }: YearStrip): void {
  if (years.length === 0) throw new RangeError(`"${title}" has no years`);
  const uneven = bands.find((band) => band.shares.length !== years.length);
  if (uneven) {
    throw new RangeError(`"${title}": band "${uneven.label}" needs ${years.length} shares`);
  }
}

function stripInWords({ title, years, marks, bands }: YearStrip): string {
  const count = (state: MarkState) => marks.filter((mark) => mark.state === state).length;
  const limits = bands.map((band) => {
    const year = firstLimit(band, years);
    return `${band.label} ${year === undefined ? 'is within its limit in all years known' : `is over its limit first in ${year}`}.`;
  });
  return [
    `${title}. Years ${years[0] ?? ''} to ${years.at(-1) ?? ''} with ${marks.length} sites:`,
    `${[
      `${count('planned')} planned`,
      ...(count('needs-position') > 0
        ? [`${count('needs-position')} that need a proposed position`]
        : []),
      ...(count('blocked') > 0 ? [`${count('blocked')} blocked`] : []),
    ].join(', ')}.`,
    ...limits,
    'The table that follows has every year.',
  ].join(' ');
}

function stripTable({ title, years, marks, bands }: YearStrip) {
  return table({
    caption: `${title}: year by year`,
    density: 'compact',
    columns: [
      textColumn('Year', 1),
      textColumn('Sites', 4),
      ...bands.map((band) => numberColumn(`${band.label}, % of limit`, 1.4)),
    ],
    rows: years.map((year, index) =>
      row(
        String(year),
        marks
          .filter((mark) => mark.year === year)
          .map(markText)
          .join(', ') || 'none',
        ...bands.map((band) => shareText(band.shares[index])),
      ),
    ),
  });
}
