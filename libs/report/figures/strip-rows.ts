import type { Shape } from '../document/drawing.js';
import { bandStep } from './band-fills.js';
import type { Area } from './shapes.js';
import { HEAVY, label, line, rect, THIN } from './shapes.js';
import { markHeight, markShapes } from './strip-marks.js';
import { roughTextWidth } from './text-width.js';
import type { Band, YearName, YearStrip } from './year-strip.js';
import { firstLimit } from './year-strip.js';

export interface StripRows {
  readonly shapes: readonly Shape[];
  readonly height: number;
}

const MOST_YEARS = 32;
const YEAR_ROW = 13;
const BAND_LABEL = 10;
const BAND = 8;
const BAND_GAP = 4;
const ROW_GAP = 12;

/** The years in as few rows as keep the marks legible, with equal numbers of years. */
export function stripRows(strip: YearStrip, width: number): StripRows {
  const rowCount = Math.ceil(strip.years.length / MOST_YEARS);
  const perRow = Math.ceil(strip.years.length / rowCount);
  const tall = markHeight(strip.marks);
  const shapes: Shape[] = [];
  let y = 0;
  for (let from = 0; from < strip.years.length; from += perRow) {
    const years = strip.years.slice(from, from + perRow);
    const row: RowPlace = { strip, years, from, step: width / perRow, tall, top: y };
    shapes.push(...marksOf(row), ...yearNames(row), ...bandsOf(row));
    y += rowHeight(row) + ROW_GAP;
  }
  return { shapes, height: y - ROW_GAP };
}

interface RowPlace {
  readonly strip: YearStrip;
  readonly years: readonly YearName[];
  readonly from: number;
  readonly step: number;
  readonly tall: number;
  readonly top: number;
}

function marksIn({ strip }: RowPlace, year: YearName) {
  return strip.marks.filter((mark) => mark.year === year);
}

function marksHeight(row: RowPlace): number {
  const most = Math.max(1, ...row.years.map((year) => marksIn(row, year).length));
  return most * (row.tall + 2);
}

function rowHeight(row: RowPlace): number {
  const bands = row.strip.bands.length * (BAND_LABEL + BAND + BAND_GAP);
  return marksHeight(row) + YEAR_ROW + bands;
}

function marksOf(row: RowPlace): readonly Shape[] {
  const base = row.top + marksHeight(row);
  const width = Math.min(16, row.step - 2);
  return row.years.flatMap((year, column) =>
    marksIn(row, year).flatMap((mark, rank) => {
      const x = column * row.step + (row.step - width) / 2;
      const y = base - (rank + 1) * (row.tall + 2);
      return markShapes(mark, { x, y, width, height: row.tall });
    }),
  );
}

function yearNames(row: RowPlace): readonly Shape[] {
  const base = row.top + marksHeight(row);
  const every = Math.max(1, Math.ceil(21 / row.step));
  return [
    line({ x: 0, y: base }, { x: row.years.length * row.step, y: base }, THIN),
    ...row.years.flatMap((year, column) =>
      column % every === 0
        ? [label({ x: (column + 0.5) * row.step, y: base + 9 }, String(year), { anchor: 'middle' })]
        : [],
    ),
  ];
}

function bandsOf(row: RowPlace): readonly Shape[] {
  const first = row.top + marksHeight(row) + YEAR_ROW;
  return row.strip.bands.flatMap((band, index) =>
    bandShapes(band, first + index * (BAND_LABEL + BAND + BAND_GAP), row),
  );
}

function bandShapes(band: Band, top: number, row: RowPlace): readonly Shape[] {
  const limit = firstLimit(band, row.strip.years);
  const cell = (column: number): Area => ({
    x: column * row.step,
    y: top + BAND_LABEL,
    width: row.step,
    height: BAND,
  });
  const limitColumn = limit === undefined ? -1 : row.years.indexOf(limit);
  return [
    label({ x: 0, y: top + 7.5 }, band.label, { weight: 'bold' }),
    ...row.years.map((_, column) =>
      rect(cell(column), bandStep(band.shares[row.from + column]).fill, THIN),
    ),
    ...(limitColumn === -1 ? [] : limitMark(band, cell(limitColumn), row)),
  ];
}

/** Outlines the first cell over the limit and says so above it, clear of the band's name. */
function limitMark(band: Band, cell: Area, row: RowPlace): readonly Shape[] {
  const text = `first over its limit in ${firstLimit(band, row.strip.years) ?? ''}`;
  const afterName = roughTextWidth(band.label, 7.5, 'bold') + 8;
  const late = cell.x > (row.years.length * row.step) / 2;
  const x = late ? cell.x + cell.width : Math.max(cell.x, afterName);
  return [
    rect(cell, 'none', HEAVY),
    label({ x, y: cell.y - 2.5 }, text, { weight: 'bold', anchor: late ? 'end' : 'start' }),
  ];
}
