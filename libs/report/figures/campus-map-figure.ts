import type { Point, Shape } from '../document/drawing.js';
import type { Figure } from '../document/figure.js';
import type { Table } from '../document/table.js';
import type { CampusMap, MapContext, MapFrame } from './campus-map.js';
import { mapFrame } from './campus-map.js';
import { legend } from './legend.js';
import { FURNITURE_HEIGHT, northArrow, scaleBar } from './map-furniture.js';
import type { LabelWish } from './label-spots.js';
import { placeLabels } from './map-labels.js';
import type { Area } from './shapes.js';
import { DASHED, GRID, rect, THIN } from './shapes.js';

const WIDTH = 468;

/**
 * A map of areas with north arrow, scale bar and legend. `alt` says what the map is to show;
 * `table` lists the areas with their facts and is printed below.
 */
export function campusMapFigure(
  map: CampusMap,
  words: { readonly alt: string; readonly table: Table },
): Figure {
  const frame = mapFrame(map, WIDTH);
  const keys = legend(map.legend, WIDTH - 190, frame.height + 8);
  const names = areaNames(map, frame);
  const foot = frame.height + FURNITURE_HEIGHT - 4;
  const omitted = names.omitted.length === 0 ? '' : ` Not labeled: ${names.omitted.join(', ')}.`;
  return {
    kind: 'figure',
    title: map.title,
    alt: `${words.alt} North is up.${omitted}`,
    drawing: {
      width: WIDTH,
      height: frame.height + Math.max(FURNITURE_HEIGHT, keys.height + 8),
      shapes: [
        ...contextShapes(map, frame),
        ...areaShapes(map, frame),
        ...names.shapes,
        rect({ x: 0, y: 0, width: WIDTH, height: frame.height }, 'none', THIN),
        ...keys.shapes,
        ...scaleBar({ x: WIDTH - 160, y: foot - 6 }, frame.scale, WIDTH),
        ...northArrow({ x: WIDTH - 16, y: foot }),
      ],
    },
    table: words.table,
  };
}

function contextShapes(map: CampusMap, frame: MapFrame): readonly Shape[] {
  return map.context.map(({ ring }): Shape => {
    const stroke = { ...GRID, tone: 'gray' } as const;
    return { kind: 'polygon', points: ring.map(frame.place), fill: 'light', stroke };
  });
}

function areaShapes(map: CampusMap, frame: MapFrame): readonly Shape[] {
  return map.areas.map(({ ring, hatch, outline }): Shape => {
    const stroke = outline === 'solid' ? { ...THIN, width: 1 } : DASHED;
    return { kind: 'polygon', points: ring.map(frame.place), fill: hatch, stroke };
  });
}

function areaNames(map: CampusMap, frame: MapFrame) {
  const wishOf = (ground: LabelWish['ground']) => (area: MapContext) => {
    const ring = area.ring.map(frame.place);
    return { text: area.label, ring, around: boxAround(ring), ground };
  };
  const named = (area: MapContext) => area.label !== '' && area.ring.length > 0;
  const wishes = [
    ...map.areas.filter(named).map(wishOf('covered')),
    ...map.context.filter(named).map(wishOf('open')),
  ];
  return placeLabels(wishes, { x: 2, y: 2, width: frame.width - 4, height: frame.height - 4 });
}

function boxAround(points: readonly Point[]): Area {
  const [xs, ys] = [points.map((point) => point.x), points.map((point) => point.y)];
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}
