/** Names on maps: of the demo, of 120 sites side by side, and of a crowd. */
import { expect, test } from 'vitest';
import { campusPlaces } from '#explain/documents/long-range/compute-places.js';
import { mapFigure } from '#report/long-range-plan/map.js';
import { crosses, inRing, overlap } from '#report/figures/box-geometry.js';
import { placeLabels } from '#report/figures/map-labels.js';
import type { LabelWish } from '#report/figures/label-spots.js';
import type { Label, Line, Point } from '#report/document/drawing.js';
import { demoSource } from '../../support/plan-source.js';

const square = (x: number, y: number, side: number): Point[] => [
  { x, y },
  { x: x + side, y },
  { x: x + side, y: y + side },
  { x, y: y + side },
];
const wish = (text: string, ring: readonly Point[], ground: LabelWish['ground']): LabelWish => {
  const [from, , to] = ring as [Point, Point, Point];
  const around = { x: from.x, y: from.y, width: to.x - from.x, height: to.y - from.y };
  return { text, ring, around, ground };
};
/** The box of a label's letters, a little smaller than the room that is kept for it. */
const boxOf = ({ at, text, size }: Label) => {
  const width = text.length * size * 0.5;
  return { x: at.x - width / 2, y: at.y - 0.7 * size, width, height: 0.7 * size };
};
const labelsOf = (shapes: ReturnType<typeof placeLabels>['shapes']) =>
  shapes.filter((shape): shape is Label => shape.kind === 'label');

test('on sites in rows no name stands on a site, on another name, or under a leader', () => {
  const bounds = { x: 0, y: 0, width: 468, height: 160 };
  const sites = Array.from({ length: 120 }, (_, n) =>
    wish(`S${100 + n}`, square(8 + (n % 20) * 23, 16 + Math.floor(n / 20) * 24, 9), 'covered'),
  );
  const { shapes, omitted } = placeLabels(sites, bounds);
  const boxes = labelsOf(shapes).map(boxOf);
  const leaders = shapes.filter((shape): shape is Line => shape.kind === 'line');
  expect(omitted).toEqual([]);
  boxes.forEach((box, n) => {
    expect(boxes.slice(n + 1).filter((other) => overlap(box, other))).toEqual([]);
    expect(sites.filter(({ around }) => overlap(box, around))).toEqual([]);
    expect(leaders.filter((leader) => crosses(leader, box))).toEqual([]);
  });
});

test('wide ground is named within its ring, clear of what stands on it', () => {
  const zone = wish('Old Nursery', square(20, 20, 120), 'open');
  const site = wish('A', square(70, 22, 20), 'covered');
  const { shapes } = placeLabels([site, zone], { x: 0, y: 0, width: 200, height: 200 });
  const name = labelsOf(shapes).find(({ text }) => text === 'Old Nursery')!;
  expect(shapes.some(({ kind }) => kind === 'line')).toBe(false);
  expect(inRing(name.at, zone.ring)).toBe(true);
  expect(overlap(boxOf(name), site.around)).toBe(false);
});

test('the demo’s map names every site and zone without a leader', () => {
  const source = demoSource('strained');
  const { drawing, alt } = mapFigure(campusPlaces(source.ground()), 'summer');
  const names = drawing.shapes.flatMap((shape) => (shape.kind === 'label' ? [shape.text] : []));
  const { candidates, existing, zones } = source.campus;
  for (const { id } of [...candidates, ...existing]) expect(names).toContain(id);
  for (const { name } of zones) expect(names).toContain(name);
  expect(alt).not.toContain('Not labeled');
});
