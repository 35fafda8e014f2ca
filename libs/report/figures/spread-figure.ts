import type { Drawing, Shape, Stroke } from '../document/drawing.js';
import type { Figure } from '../document/figure.js';
import { axisShapes, center } from './bar-axes.js';
import { barFrame, type BarFrame } from './bar-frame.js';
import type { StackedBars } from './bars.js';
import { legend } from './legend.js';
import { GRID, HEAVY, line, polyline, rect, THIN } from './shapes.js';

const HEAVY_DASHES: Stroke = { ...HEAVY, dash: [4, 2] };

/** The range that eight of ten lie in, and the middle. */
export interface ValueSpread {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

export interface SpreadSeries {
  readonly label: string;
  /** One for each column. */
  readonly spreads: readonly ValueSpread[];
}

/** Ranges by column, set against a band that runs through all of them. */
export interface SpreadChart {
  readonly title: string;
  readonly columns: readonly string[];
  readonly unit: string;
  readonly bars: SpreadSeries;
  readonly band: SpreadSeries;
}

const HEIGHT = 210;
const LEGEND_ROOM = 16;
/** Part of a column that its bar takes. */
const BAR_SHARE = 0.55;

/**
 * Ranges as hatched bars with a heavy line at the middle, and the other series as a light band with a
 * dashed line through its middles: told apart by shape and pattern, not by color.
 */
export function spreadFigure(chart: SpreadChart, of: Pick<Figure, 'alt' | 'table'>): Figure {
  return { kind: 'figure', title: chart.title, drawing: drawingOf(chart), ...of };
}

function drawingOf(chart: SpreadChart): Drawing {
  const { columns, unit, bars, band } = chart;
  const highest: StackedBars = {
    columns,
    unit,
    series: [{ label: '', hatch: 'none', values: bars.spreads.map(({ high }) => high) }],
    supply: band.spreads.map(({ high }) => high),
    supplyLabel: '',
    height: HEIGHT,
  };
  const frame = barFrame(highest);
  const { shapes } = legend(
    [
      { text: `${bars.label}: eight of ten futures, line at the middle`, fill: 'diagonal' },
      {
        text: `${band.label}: eight of ten futures, dashes at the middle`,
        fill: 'light',
        stroke: GRID,
      },
    ],
    frame.right,
    HEIGHT + 4,
  );
  return {
    width: frame.width,
    height: HEIGHT + LEGEND_ROOM,
    shapes: [
      ...bandShapes(band.spreads, frame),
      ...axisShapes(highest, frame),
      ...barShapes(bars.spreads, frame),
      polyline(
        steps(
          band.spreads.map(({ middle }) => middle),
          frame,
        ),
        HEAVY_DASHES,
      ),
      ...shapes,
    ],
  };
}

function bandShapes(spreads: readonly ValueSpread[], frame: BarFrame): readonly Shape[] {
  return spreads.map(({ low, high }, column) => {
    const [top, bottom] = [frame.y(high), frame.y(low)];
    const x = frame.left + column * frame.step;
    return rect({ x, y: top, width: frame.step, height: bottom - top }, 'light');
  });
}

function barShapes(spreads: readonly ValueSpread[], frame: BarFrame): readonly Shape[] {
  const width = frame.step * BAR_SHARE;
  return spreads.flatMap(({ low, middle, high }, column): readonly Shape[] => {
    const x = center(frame, column) - width / 2;
    const [top, bottom, y] = [frame.y(high), frame.y(low), frame.y(middle)];
    return [
      rect({ x, y: top, width, height: Math.max(0.5, bottom - top) }, 'diagonal', THIN),
      line({ x, y }, { x: x + width, y }, HEAVY),
    ];
  });
}

function steps(values: readonly number[], frame: BarFrame) {
  return values.flatMap((value, column) => {
    const x = frame.left + column * frame.step;
    return [
      { x, y: frame.y(value) },
      { x: x + frame.step, y: frame.y(value) },
    ];
  });
}
