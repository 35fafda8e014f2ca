import { expect, test } from 'vitest';
import type { Drawing, Rect } from '#report/document/drawing.js';
import { plainText } from '#report/document/inline.js';
import { campusMapFigure } from '#report/figures/campus-map-figure.js';
import { seasonCareFigure } from '#report/figures/season-care-figure.js';
import { yearStripFigure } from '#report/figures/year-strip-figure.js';
import { careFigure, mapFigure, stripFigure } from '../../support/sample-figures.js';

const labels = (drawing: Drawing) =>
  drawing.shapes.flatMap((shape) => (shape.kind === 'label' ? [shape.text] : []));
const bars = (drawing: Drawing, fill: Rect['fill']) =>
  drawing.shapes.filter((shape): shape is Rect => shape.kind === 'rect' && shape.fill === fill);

const care = {
  title: 'Summer',
  years: [2027, 2028, 2029],
  unit: 'Hours',
  series: [
    { label: 'Young', hatch: 'dark', values: [100, 200, null] },
    { label: 'Mature', hatch: 'light', values: [0, 100, 150] },
  ],
  supply: [250, 250, 250],
} as const;

test('the alternate text says range, layers, totals and the first year above supply', () => {
  const { alt } = seasonCareFigure(care);
  for (const part of [
    '2027 to 2029',
    'Young, Mature',
    'from 100 to more than 150',
    'first above the stepped line "Supply" in 2028',
  ]) {
    expect(alt).toContain(part);
  }
  expect(seasonCareFigure({ ...care, supply: [900, 900, 900] }).alt).toContain('nowhere above');
});

test('the table has every value, and unknown in words', () => {
  const rows = seasonCareFigure(care).table.rows.map((row) => row.cells.map(plainText));
  expect(rows).toEqual([
    ['2027', '100', '0', '100', '250'],
    ['2028', '200', '100', '300', '250'],
    ['2029', 'unknown', '150', 'more than 150', '250'],
  ]);
});

test('bar heights are as their values; an unknown part is a question mark and no bar', () => {
  const { drawing } = seasonCareFigure(care);
  const dark = bars(drawing, 'dark')
    .filter(({ x }) => x < 380)
    .map(({ height }) => height);
  expect(dark).toHaveLength(2);
  expect(dark[1]! / dark[0]!).toBeCloseTo(2, 9);
  expect(labels(drawing)).toContain('?');
});

test('names at the end keep the order of the layers, also where layers are empty', () => {
  const series = ['Low', 'Middle', 'High'].map((name) => ({
    label: name,
    hatch: 'light' as const,
    values: [1, 1, 0],
  }));
  const { shapes } = seasonCareFigure({ ...care, series }).drawing;
  const heights = ['Low', 'Middle', 'High'].map(
    (name) =>
      shapes.flatMap((one) => (one.kind === 'label' && one.text === name ? [one.at.y] : []))[0]!,
  );
  expect(heights).toEqual([...heights].sort((a, b) => b - a));
});

test('the supply line has a step for each year and breaks where supply is unknown', () => {
  const lines = (supply: readonly (number | null)[]) =>
    seasonCareFigure({ ...care, supply }).drawing.shapes.flatMap((shape) =>
      shape.kind === 'polyline' ? [shape.points.length] : [],
    );
  expect(lines([250, 300, 250])).toEqual([6]);
  expect(lines([250, null, 250])).toEqual([2, 2]);
});

test('a series with a missing year is refused', () => {
  expect(() => seasonCareFigure({ ...care, supply: [1, 2] })).toThrow(/needs 3 values/);
});

test('each site of the strip is one mark, told apart by hatch and outline', () => {
  const { drawing } = stripFigure;
  const names = labels(drawing).filter((text) => text.startsWith('TVU-'));
  expect(new Set(names).size).toBe(31);
  const marks = (fill: Rect['fill']) => bars(drawing, fill).filter(({ height }) => height > 14);
  expect(marks('diagonal').every(({ stroke }) => !stroke?.dash)).toBe(true);
  expect(marks('none').every(({ stroke }) => stroke?.dash)).toBe(true);
  expect([marks('light').length, marks('diagonal').length, marks('none').length]).toEqual([
    13, 15, 3,
  ]);
});

test('the strip names the first year over each limit in the drawing and in words', () => {
  expect(labels(stripFigure.drawing)).toContain('first over its limit in 2040');
  expect(stripFigure.alt).toContain('Summer hours is over its limit first in 2040.');
  expect(stripFigure.alt).toContain(
    '31 sites: 13 planned, 15 that need a proposed position, 3 blocked.',
  );
});

test('sixty years are drawn in two rows with every year in the table', () => {
  const years = Array.from({ length: 60 }, (_, n) => 2027 + n);
  const strip = yearStripFigure({ title: 'Long', years, marks: [], bands: [] });
  expect(strip.table.rows).toHaveLength(60);
  expect(strip.drawing.height).toBeGreaterThan(70);
});

test('the map keeps shapes true, north up', () => {
  const square = [
    [0, 0],
    [100, 0],
    [100, 100],
    [0, 100],
  ].map(([x, y]) => ({ x: x!, y: y! }));
  const area = { label: 'A', ring: square, hatch: 'light', outline: 'solid' } as const;
  const map = { title: 'Map', areas: [area], context: [], legend: [], height: 200 };
  const figure = campusMapFigure(map, { alt: 'One site.', table: mapFigure.table });
  const ring = figure.drawing.shapes.find((shape) => shape.kind === 'polygon')!;
  const [southWest, southEast, northEast] = ring.points;
  expect(southEast!.x - southWest!.x).toBeCloseTo(southEast!.y - northEast!.y, 9);
  expect(northEast!.y).toBeLessThan(southEast!.y);
  expect(labels(figure.drawing)).toEqual(expect.arrayContaining(['A', 'N', '0']));
});

test('the scale bar is as long as it says', () => {
  const { shapes } = mapFigure.drawing;
  const bar = shapes.filter((shape): shape is Rect => shape.kind === 'rect' && shape.height === 4);
  const feet = Number(
    /^(\d+) ft$/.exec(labels(mapFigure.drawing).find((text) => text.endsWith(' ft'))!)![1],
  );
  const library = shapes.filter((shape) => shape.kind === 'polygon')[0]!.points;
  const pointsPerFoot = (library[1]!.x - library[0]!.x) / 200;
  expect(bar[0]!.width + bar[1]!.width).toBeCloseTo(feet * pointsPerFoot, 6);
});

test('labels that find no room are named in words', () => {
  const tiny = Array.from(
    { length: 400 },
    (_, n) =>
      ({
        label: `Site number ${n}`,
        ring: [
          { x: n, y: 0 },
          { x: n + 1, y: 0 },
          { x: n, y: 1 },
        ],
        hatch: 'none',
        outline: 'solid',
      }) as const,
  );
  const map = { title: 'Crowd', areas: tiny, context: [], legend: [], height: 120 };
  const { alt, drawing } = campusMapFigure(map, { alt: 'Many.', table: mapFigure.table });
  const drawn = labels(drawing).filter((text) => text.startsWith('Site number'));
  expect(drawn.length).toBeLessThan(400);
  expect(alt.match(/Site number/g)).toHaveLength(400 - drawn.length);
});

test('no drawing puts one shape outside its frame', () => {
  for (const { drawing } of [careFigure, stripFigure, mapFigure]) {
    for (const shape of drawing.shapes) {
      if (shape.kind !== 'rect') continue;
      expect(shape.x).toBeGreaterThanOrEqual(0);
      expect(shape.x + shape.width).toBeLessThanOrEqual(drawing.width + 1e-9);
      expect(shape.y + shape.height).toBeLessThanOrEqual(drawing.height + 1e-9);
    }
  }
});
