import type { Block } from '#report/document/plan-document.js';
import { numberColumn, row, table, textColumn } from '#report/document/table.js';
import { heading, paragraph } from '#report/document/text-blocks.js';
import type { FeetPoint } from '#report/figures/campus-map.js';
import { campusMapFigure } from '#report/figures/campus-map-figure.js';
import { seasonCareFigure } from '#report/figures/season-care-figure.js';
import { yearStripFigure } from '#report/figures/year-strip-figure.js';

const years = Array.from({ length: 30 }, (_, index) => 2027 + index);

/** Sample load and supply that rise as a program's would; not a solved plan. */
export const careFigure = seasonCareFigure({
  title: 'Summer care hours against summer supply',
  years,
  unit: 'Hours',
  series: [
    { label: 'First year', hatch: 'dark', values: years.map(() => 208) },
    {
      label: 'Years 2 and 3',
      hatch: 'diagonal',
      values: years.map((_, n) => Math.min(n, 2) * 145),
    },
    {
      label: 'Mature',
      hatch: 'light',
      values: years.map((_, n) => (n === 6 ? null : Math.max(0, n - 2) * 109)),
    },
  ],
  supply: years.map((_, n) => (n < 9 ? 1306 : n < 19 ? 1774 : 2242)),
});

export const stripFigure = yearStripFigure({
  title: 'All years of the plan',
  years,
  marks: years.flatMap((year, n) => [
    {
      year,
      label: `TVU-${String(n + 3).padStart(2, '0')}`,
      state: n < 12 ? 'planned' : n % 7 === 0 ? 'blocked' : 'needs-position',
    } as const,
    ...(n === 4 ? [{ year, label: 'TVU-41', state: 'planned' } as const] : []),
  ]),
  bands: [
    { label: 'Money', shares: years.map((_, n) => 0.4 + n * 0.015) },
    { label: 'Summer hours', shares: years.map((_, n) => 0.2 + n * 0.065) },
    { label: 'Compost', shares: years.map((_, n) => (n > 24 ? null : 0.5 + n * 0.02)) },
    { label: 'Sites left', shares: years.map((_, n) => n / 36) },
  ],
});

type Box = readonly [x: number, y: number, width: number, height: number];
const block = ([x, y, width, height]: Box): readonly FeetPoint[] => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height * 1.1 },
  { x: x + width / 3, y: y + height },
  { x, y: y + height },
];

export const mapFigure = campusMapFigure(
  {
    title: 'Candidate sites on the campus',
    height: 300,
    areas: [
      {
        label: 'TVU-19 East Hall Court',
        ring: block([900, 500, 130, 90]),
        hatch: 'diagonal',
        outline: 'solid',
      },
      { label: 'TVU-03', ring: block([200, 640, 160, 120]), hatch: 'light', outline: 'solid' },
      { label: 'TVU-14', ring: block([420, 180, 220, 90]), hatch: 'none', outline: 'dashed' },
      { label: 'TVU-15', ring: block([430, 290, 60, 40]), hatch: 'dots', outline: 'solid' },
      { label: 'TVU-16', ring: block([500, 290, 60, 40]), hatch: 'cross', outline: 'solid' },
    ],
    context: [
      { label: 'Library', ring: block([560, 520, 200, 160]) },
      { label: 'East Hall', ring: block([1060, 470, 120, 220]) },
      { label: '', ring: block([0, 0, 1300, 40]) },
    ],
    legend: [
      { text: 'planned', fill: 'light' },
      { text: 'needs a position', fill: 'diagonal' },
      { text: 'built', fill: 'dots' },
      { text: 'with open questions', fill: 'cross' },
    ],
  },
  {
    alt: 'Five candidate sites around the library and East Hall.',
    table: table({
      caption: 'Sites on the map',
      columns: [textColumn('Site'), numberColumn('Area, sf')],
      rows: [row('TVU-19 East Hall Court', '11,000'), row('TVU-03', '17,600')],
    }),
  },
);

/** Each kind of figure under its own heading. */
export const sampleFigures: readonly Block[] = [
  heading(1, 'All years'),
  paragraph('Each mark is a site in the year it is planned for.'),
  stripFigure,
  heading(1, 'Care'),
  careFigure,
  heading(1, 'Where'),
  mapFigure,
];
