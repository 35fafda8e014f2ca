import type { Hatch, Point } from '../document/drawing.js';
import type { LegendEntry } from './legend.js';

/** A point in feet on a local plane: `x` to the east, `y` to the north. */
export interface FeetPoint {
  readonly x: number;
  readonly y: number;
}

/** An area with a name. The last point of the ring is not repeated. */
export interface MapArea {
  readonly label: string;
  readonly ring: readonly FeetPoint[];
  readonly hatch: Hatch;
  readonly outline: 'solid' | 'dashed';
}

/** Something that only gives bearings, such as a building or a walk; drawn in gray. */
export interface MapContext {
  readonly label: string;
  readonly ring: readonly FeetPoint[];
}

export interface CampusMap {
  readonly title: string;
  /** Areas in order of importance: earlier ones get the better place for their label. */
  readonly areas: readonly MapArea[];
  readonly context: readonly MapContext[];
  readonly legend: readonly LegendEntry[];
  /** Tallest the map may be, in points. */
  readonly height: number;
}

/** Carries feet to points of the drawing. */
export interface MapFrame {
  readonly width: number;
  readonly height: number;
  /** Points per foot. */
  readonly scale: number;
  readonly place: (point: FeetPoint) => Point;
}

const MARGIN = 14;

/** Fits all rings into a width and a greatest height, north up. Throws when there are none. */
export function mapFrame(map: CampusMap, width: number): MapFrame {
  const points = [...map.areas, ...map.context].flatMap((area) => area.ring);
  if (points.length === 0) throw new RangeError(`map "${map.title}" has nothing to show`);
  const [west, east] = extent(points.map((point) => point.x));
  const [south, north] = extent(points.map((point) => point.y));
  const room = { x: width - 2 * MARGIN, y: map.height - 2 * MARGIN };
  const scale = Math.min(room.x / Math.max(1, east - west), room.y / Math.max(1, north - south));
  const left = (width - (east - west) * scale) / 2;
  return {
    width,
    height: (north - south) * scale + 2 * MARGIN,
    scale,
    place: ({ x, y }) => ({ x: left + (x - west) * scale, y: MARGIN + (north - y) * scale }),
  };
}

function extent(values: readonly number[]): readonly [number, number] {
  return [Math.min(...values), Math.max(...values)];
}
