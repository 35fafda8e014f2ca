import turfArea from '@turf/area';
import LatLon from 'geodesy/latlon-ellipsoidal-vincenty.js';
import type { Position } from '#domain/site.js';
import { areaSqFt, perimeterFt, ringMeasures } from '#estimating/geometry/area.js';
import { distanceFt } from '#estimating/geometry/distance.js';
import { rootProtectionRadiusFt } from '#estimating/geometry/root-protection.js';
import type { OutsideCheck } from './outside-check.js';

const GEOGRAPHICLIB = 'GeographicLib geodesic/test/geodesictest.js, Planimeter cases';

/** Latitude, longitude as that file gives them. */
const POLYGONS = [
  {
    name: '0a',
    points: [
      [89, 0],
      [89, 90],
      [89, 180],
      [89, 270],
    ],
    meters: [631819.8745, 1e-4],
    sqMeters: [24952305678, 1],
  },
  {
    name: '0b',
    points: [
      [-89, 0],
      [-89, 90],
      [-89, 180],
      [-89, 270],
    ],
    meters: [631819.8745, 1e-4],
    sqMeters: [-24952305678, 1],
  },
  {
    name: '0c',
    points: [
      [0, -1],
      [-1, 0],
      [0, 1],
      [1, 0],
    ],
    meters: [627598.2731, 1e-4],
    sqMeters: [24619419146, 1],
  },
  {
    name: '0d',
    points: [
      [90, 0],
      [0, 0],
      [0, 90],
    ],
    meters: [30022685, 1],
    sqMeters: [63758202715511, 1],
  },
  {
    name: '5',
    points: [
      [89, 0.1],
      [89, 90.1],
      [89, -179.9],
    ],
    meters: [539297, 1],
    sqMeters: [12476152838.5, 1],
  },
  {
    name: '13',
    points: [
      [89, -360],
      [89, -240],
      [89, -120],
      [89, 0],
      [89, 120],
      [89, 240],
    ],
    meters: [1160741, 1],
    sqMeters: [32415230256, 1],
  },
] as const;

function ringOf(points: readonly (readonly [number, number])[]): Position[] {
  return points.map(([latitude, longitude]) => [longitude, latitude]);
}

/** A quadrangle of parallels and meridians about the size of a site, in open ocean. */
export const OCEAN_SITE: readonly Position[] = [
  [-38, 47.7],
  [-37.9985, 47.7],
  [-37.9985, 47.701],
  [-38, 47.701],
  [-38, 47.7],
];

/**
 * Area in square meters between two parallels and two meridians of WGS 84, in closed form (the authalic integral).
 * A parallel leaves the geodesic by less than a millimeter over a site.
 */
function quadrangleSqMeters(): number {
  const a = 6378137;
  const f = 1 / 298.257223563;
  const e = Math.sqrt(f * (2 - f));
  const b = a * (1 - f);
  const q = (degrees: number): number => {
    const s = Math.sin((degrees * Math.PI) / 180);
    return s / (1 - e * e * s * s) + Math.atanh(e * s) / e;
  };
  return ((b * b) / 2) * ((0.0015 * Math.PI) / 180) * (q(47.701) - q(47.7));
}

const planimeter = POLYGONS.flatMap(({ name, points, meters, sqMeters }): OutsideCheck[] => [
  {
    formula: 'geometry',
    what: `area of polygon ${name}`,
    ground: 'printed',
    source: GEOGRAPHICLIB,
    unit: 'm2',
    expected: sqMeters[0],
    tolerance: sqMeters[1],
    actual: () => ringMeasures(ringOf(points)).squareMeters,
  },
  {
    formula: 'geometry',
    what: `perimeter of polygon ${name}`,
    ground: 'printed',
    source: GEOGRAPHICLIB,
    unit: 'm',
    expected: meters[0],
    tolerance: meters[1],
    actual: () => ringMeasures(ringOf(points)).meters,
  },
]);

const vincentyMeters = (): number =>
  OCEAN_SITE.slice(1).reduce((sum, [lon, lat], i) => {
    const [fromLon, fromLat] = OCEAN_SITE[i]!;
    return sum + new LatLon(fromLat, fromLon).distanceTo(new LatLon(lat, lon));
  }, 0);

export const geometryChecks: readonly OutsideCheck[] = [
  ...planimeter,
  {
    formula: 'geometry',
    what: 'area of a site-size quadrangle',
    ground: 'exact identity',
    source:
      'authalic integral of WGS 84 between parallels (J. P. Snyder, Map Projections, 1987, eq. 3-12)',
    unit: 'sf',
    expected: quadrangleSqMeters() / 0.09290304,
    tolerance: 0.5,
    actual: () => areaSqFt([OCEAN_SITE]),
  },
  {
    formula: 'geometry',
    what: 'the same on a sphere, which may be 0.9 % off',
    ground: 'second library',
    source: '@turf/area 7.4.0',
    unit: 'sf',
    expected:
      turfArea({ type: 'Polygon', coordinates: [OCEAN_SITE.map(([x, y]) => [x, y])] }) / 0.09290304,
    tolerance: 0.009 * 134_000,
    actual: () => areaSqFt([OCEAN_SITE]),
  },
  {
    formula: 'geometry',
    what: 'perimeter by Vincenty’s inverse formula',
    ground: 'second library',
    source: 'geodesy 2.4.0',
    unit: 'ft',
    expected: vincentyMeters() / 0.3048,
    tolerance: 0.01,
    actual: () => perimeterFt([OCEAN_SITE]),
  },
  {
    formula: 'geometry',
    what: 'distance between two sites by Vincenty’s inverse formula',
    ground: 'second library',
    source: 'geodesy 2.4.0',
    unit: 'ft',
    expected: new LatLon(47.7, -38).distanceTo(new LatLon(47.7053, -37.9921)) / 0.3048,
    tolerance: 0.01,
    actual: () => distanceFt([-38, 47.7], [-37.9921, 47.7053]),
  },
  {
    formula: 'geometry',
    what: 'root protection of a 20 in trunk at 1.0 ft per inch',
    ground: 'printed',
    source: 'Vancouver WA code 20.170.100',
    unit: 'ft',
    expected: 20,
    tolerance: 0,
    actual: () => rootProtectionRadiusFt({ trunkInches: 20, feetPerInch: 1 }),
  },
  {
    formula: 'geometry',
    what: 'root protection of a 20 in trunk at 1.5 ft per inch (the NC Urban Forest Council prints this 30 ft beside its own 1.25)',
    ground: 'printed',
    source: 'Edina MN tree rules',
    unit: 'ft',
    expected: 30,
    tolerance: 0,
    actual: () => rootProtectionRadiusFt({ trunkInches: 20, feetPerInch: 1.5 }),
  },
];
