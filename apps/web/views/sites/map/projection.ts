import type { CampusFile } from '../../../api.js';

export type Position = readonly [longitude: number, latitude: number];
/** Feet east and south of a corner of the campus. */
export type Point = readonly [x: number, y: number];

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export interface Projection {
  readonly toFeet: (position: Position) => Point;
  readonly toPosition: (point: Point) => Position;
  /** All that the campus file draws, with a margin. */
  readonly extent: Box;
}

/** Mean radius of the earth in feet; for drawing only, areas come from the api. */
const EARTH_FEET = 20_902_231;
const RADIAN = Math.PI / 180;

/** A flat drawing true to scale at the middle of the campus: enough for a campus, not for a county. */
export function projectionOf(file: CampusFile): Projection {
  const positions = [...file.candidateSites, ...file.existingSites, ...file.zones].flatMap(
    ({ boundary }) => (boundary?.coordinates ?? []).flat() as unknown as readonly Position[],
  );
  const [west, south, east, north] = bounds(positions);
  const eastFeet = EARTH_FEET * RADIAN * Math.cos(((south + north) / 2) * RADIAN);
  const northFeet = EARTH_FEET * RADIAN;
  const toFeet = ([longitude, latitude]: Position): Point => [
    (longitude - west) * eastFeet,
    (north - latitude) * northFeet,
  ];
  const [width, height] = toFeet([east, south]);
  const margin = 0.04 * Math.max(width, height, 100);
  return {
    toFeet,
    toPosition: ([x, y]) => [west + x / eastFeet, north - y / northFeet],
    extent: {
      left: -margin,
      top: -margin,
      width: width + 2 * margin,
      height: height + 2 * margin,
    },
  };
}

function bounds(positions: readonly Position[]): readonly [number, number, number, number] {
  if (positions.length === 0) return [0, 0, 0.001, 0.001];
  let [west, south, east, north] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [longitude, latitude] of positions) {
    west = Math.min(west, longitude);
    east = Math.max(east, longitude);
    south = Math.min(south, latitude);
    north = Math.max(north, latitude);
  }
  return [west, south, east, north];
}

/** The path of rings in feet, to a tenth of a foot. */
export function pathOf(rings: readonly (readonly Position[])[], { toFeet }: Projection): string {
  return rings
    .map((ring) => {
      const corners = ring.map(toFeet).map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`);
      return corners.length === 0 ? '' : `M${corners.join('L')}Z`;
    })
    .join('');
}

/** The box about a ring, in feet. */
export function extentOf(ring: readonly Position[], { toFeet }: Projection): Box {
  const points = ring.map(toFeet);
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  return { left, top, width: Math.max(...xs) - left, height: Math.max(...ys) - top };
}

/** A round number of feet about a fifth of the width of the map. */
export function scaleBarFeet(widthFeet: number): number {
  const wanted = widthFeet / 5;
  const power = 10 ** Math.floor(Math.log10(wanted));
  return power * ([5, 2, 1].find((factor) => factor * power <= wanted) ?? 1);
}
