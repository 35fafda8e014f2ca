import type { Position, Rings } from '#domain/site.js';
import type { Finding } from '../finding.js';
import { areaSqFt, isClosed, perimeterFt, ringMeasures } from './area.js';
import { crossingEdges } from './crossings.js';

/** What is wrong with a boundary, machine readable. */
export type BoundaryFault =
  | 'empty'
  | 'not-a-number'
  | 'swapped'
  | 'projected'
  | 'unclosed'
  | 'too-few-corners'
  | 'crossing'
  | 'winding'
  | 'sliver';

export interface BoundaryFinding extends Finding {
  readonly fault: BoundaryFault;
}

/** Half the perimeter times this mean width is the area of a long strip. Below it a shape is a sliver. */
const SLIVER_WIDTH_FT = 3;

/** Swapping is only suspected of a boundary this far (degrees) from where the campus is said to be. */
const FAR_FROM_CAMPUS_DEGREES = 5;

/**
 * What is wrong with a drawn boundary (RFC 7946 section 3.1.6, WGS 84). `near`, where the campus is
 * known, lets swapped coordinates be told from a far place.
 */
export function boundaryFindings(polygon: Rings, near?: Position): BoundaryFinding[] {
  if (polygon.length === 0)
    return [reject('boundary', 0, ['empty', 'has no ring', 'Draw the boundary.'])];
  const coordinates = polygon.flatMap((ring, index) => coordinateFindings(ring, at(index), near));
  if (coordinates.length > 0) return coordinates;
  const shape = polygon.flatMap((ring, index) => shapeFindings(ring, index));
  if (shape.some((f) => f.severity === 'reject')) return shape;
  return [...shape, ...thinFindings(polygon)];
}

function coordinateFindings(
  ring: readonly Position[],
  field: string,
  near?: Position,
): BoundaryFinding[] {
  if (ring.some(([x, y]) => !Number.isFinite(x) || !Number.isFinite(y))) {
    return [
      reject(field, ring.length, [
        'not-a-number',
        'has a position that is not a number',
        'Draw it again.',
      ]),
    ];
  }
  const degrees = ring.every(([x, y]) => Math.abs(x) <= 180 && Math.abs(y) <= 90);
  const swapped = ring.every(([x, y]) => Math.abs(y) <= 180 && Math.abs(x) <= 90);
  if (!degrees && swapped) return [swapFinding(ring, field)];
  if (!degrees) {
    const problem = 'is not in degrees; it looks like projected coordinates';
    const remedy = 'Export again as WGS 84 longitude and latitude (EPSG:4326).';
    return [reject(field, ring[0], ['projected', problem, remedy])];
  }
  const far = near !== undefined && swapped && looksSwapped(ring, near);
  return far ? [swapFinding(ring, field)] : [];
}

function swapFinding(ring: readonly Position[], field: string): BoundaryFinding {
  const problem = 'seems to give latitude before longitude';
  return reject(field, ring[0], ['swapped', problem, 'Give each position as longitude, latitude.']);
}

function looksSwapped(ring: readonly Position[], [longitude, latitude]: Position): boolean {
  const off = (x: number, y: number): number =>
    Math.max(Math.abs(x - longitude), Math.abs(y - latitude));
  return ring.every(
    ([x, y]) => off(x, y) > FAR_FROM_CAMPUS_DEGREES && off(y, x) <= FAR_FROM_CAMPUS_DEGREES,
  );
}

function shapeFindings(ring: readonly Position[], index: number): BoundaryFinding[] {
  const field = at(index);
  const findings: BoundaryFinding[] = [];
  if (!isClosed(ring)) {
    findings.push(
      warn(field, ring.length, [
        'unclosed',
        'is not closed',
        'The first position was repeated at the end.',
      ]),
    );
  }
  if (distinctPositions(ring) < 3) {
    const problem = `has ${distinctPositions(ring)} distinct positions`;
    return [
      ...findings,
      reject(field, ring.length, ['too-few-corners', problem, 'Draw at least three corners.']),
    ];
  }
  const crossing = crossingEdges(ring);
  if (crossing) {
    const problem = `crosses itself: edge ${crossing[0] + 1} meets edge ${crossing[1] + 1}`;
    return [
      ...findings,
      reject(field, crossing, ['crossing', problem, 'Draw the boundary without crossing.']),
    ];
  }
  const counterClockwise = ringMeasures(ring).squareMeters > 0;
  if (counterClockwise !== (index === 0)) {
    const problem = `winds ${counterClockwise ? 'counter-clockwise' : 'clockwise'}`;
    findings.push(
      warn(field, ring.length, [
        'winding',
        problem,
        'It was turned to follow the right-hand rule.',
      ]),
    );
  }
  return findings;
}

function thinFindings(polygon: Rings): BoundaryFinding[] {
  const area = areaSqFt(polygon);
  const meanWidthFt = (2 * area) / perimeterFt(polygon);
  if (meanWidthFt >= SLIVER_WIDTH_FT) return [];
  const problem = `is a sliver: about ${meanWidthFt.toFixed(1)} ft wide on average`;
  const finding = meanWidthFt < 0.1 ? reject : warn;
  return [
    finding('boundary', area, [
      'sliver',
      problem,
      'Check the boundary, or join it to its neighbor.',
    ]),
  ];
}

function distinctPositions(ring: readonly Position[]): number {
  return new Set(ring.map(([x, y]) => `${x},${y}`)).size;
}

function at(index: number): string {
  return index === 0 ? 'boundary' : `boundary hole ${index}`;
}

type Said = readonly [fault: BoundaryFault, problem: string, remedy: string];

function reject(field: string, value: unknown, [fault, problem, remedy]: Said): BoundaryFinding {
  return { field, value, severity: 'reject', fault, problem, remedy };
}

function warn(field: string, value: unknown, [fault, problem, remedy]: Said): BoundaryFinding {
  return { field, value, severity: 'warn', fault, problem, remedy };
}
