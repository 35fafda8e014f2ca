import { anError, type Problem, type ProblemText } from '#domain/problem.js';
import { MOST_ROWS } from '../limits.js';
import { fileProblem } from '../reading/whole-file.js';
import { SITE_COLUMNS, type SiteColumn } from '../sites/site-columns.data.js';
import type { SiteRow } from '../sites/site-rows.js';

export interface GeoJsonReading {
  readonly rows: readonly SiteRow[];
  /** Features that cannot be read, and what is wrong with the file as a whole. */
  readonly rejected: readonly { readonly place: string; readonly problem: Problem }[];
  readonly problems: readonly Problem[];
}

type Json = Readonly<Record<string, unknown>>;

/** Reads the sites of a FeatureCollection or of a single feature. A member that is not known is left alone (RFC 7946, 6.1). */
export function readGeoJson(document: Json): GeoJsonReading {
  const features = document['type'] === 'Feature' ? [document] : document['features'];
  if (!Array.isArray(features)) {
    return refusal('GEOJSON-NO-FEATURES', [
      'The file has no list of features.',
      'Give a GeoJSON FeatureCollection with a feature for each site.',
    ]);
  }
  if (features.length > MOST_ROWS) {
    return refusal('IMPORT-TOO-MANY-ROWS', [
      `The file has more than ${MOST_ROWS.toLocaleString('en-US')} features.`,
      'Give the sites of one campus only.',
    ]);
  }
  const foreign = foreignSystem(document);
  const read = features.map((feature, place) => featureRow(feature, `feature ${place + 1}`));
  return {
    rows: read.flatMap((one) => ('cells' in one ? [one] : [])),
    rejected: read.flatMap((one) => ('problem' in one ? [one] : [])),
    problems: foreign ? [foreign] : [],
  };
}

function refusal(code: string, text: ProblemText): GeoJsonReading {
  return { rows: [], rejected: [], problems: [fileProblem(code, text)] };
}

/** The `crs` member of the specification of 2008, which RFC 7946 (4) took away. */
function foreignSystem({ crs }: Json): Problem | undefined {
  const properties = isRecord(crs) && isRecord(crs['properties']) ? crs['properties'] : {};
  const name = properties['name'];
  if (typeof name !== 'string' || /CRS84|EPSG:+4326/i.test(name)) return undefined;
  const place = { code: 'GEOJSON-PROJECTED', record: 'the file', field: 'crs', value: name };
  return anError(place, [
    `The coordinates are in the system ${name}.`,
    'Export again in WGS 84, longitude and latitude in degrees.',
  ]);
}

type FeatureReading = SiteRow | { readonly place: string; readonly problem: Problem };

function featureRow(feature: unknown, place: string): FeatureReading {
  const refuse = (code: string, field: string, text: ProblemText): FeatureReading => ({
    place,
    problem: anError({ code, record: nameOf(feature, place), field }, text),
  });
  if (!isRecord(feature) || feature['type'] !== 'Feature') {
    return refuse('GEOJSON-NO-FEATURE', '', ['This is no feature.', 'Leave it out.']);
  }
  const properties = isRecord(feature['properties']) ? feature['properties'] : {};
  const cells = new Map(cellsOf({ id: feature['id'], ...properties }));
  const { geometry } = feature;
  if (geometry === null || geometry === undefined) return { place, cells, slipped: false };
  const shape = polygonOf(geometry);
  if (typeof shape === 'string') return refuse('GEOJSON-GEOMETRY', 'geometry', GEOMETRY[shape]);
  return { place, cells, slipped: false, boundary: shape };
}

function cellsOf(properties: Json): [SiteColumn, string][] {
  return SITE_COLUMNS.flatMap((column): [SiteColumn, string][] => {
    const text = textOf(properties[column.header]);
    return text.trim() === '' || column.kind === 'boundary' ? [] : [[column, text]];
  });
}

function textOf(value: unknown): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number' || typeof value === 'string') return String(value);
  return Array.isArray(value) ? value.map(textOf).join('; ') : '';
}

const GEOMETRY = {
  several: [
    'The site is drawn in several pieces.',
    'Give each piece a feature of its own: a site is one piece of ground.',
  ],
  other: ['The site is drawn as a point or a line.', 'Draw its outline as a polygon.'],
  broken: [
    'The outline is no list of rings of positions.',
    'Export it again as a polygon of longitudes and latitudes.',
  ],
} as const satisfies Record<string, ProblemText>;

/** The polygon with longitude and latitude alone; a height beside them (RFC 7946, 3.1.1) is left out. */
function polygonOf(geometry: unknown): object | keyof typeof GEOMETRY {
  if (!isRecord(geometry)) return 'broken';
  const { type, coordinates } = geometry;
  if (type === 'MultiPolygon' && Array.isArray(coordinates) && coordinates.length === 1) {
    return polygonOf({ type: 'Polygon', coordinates: coordinates[0] as unknown });
  }
  if (type === 'MultiPolygon' || type === 'GeometryCollection') return 'several';
  if (type !== 'Polygon') return 'other';
  if (!Array.isArray(coordinates) || !coordinates.every(isRing)) return 'broken';
  const rings = (coordinates as number[][][]).map((ring) => ring.map(([x, y]) => [x, y]));
  return { type: 'Polygon', coordinates: rings };
}

function isRing(ring: unknown): boolean {
  return Array.isArray(ring) && ring.every(isPosition);
}

function isPosition(position: unknown): boolean {
  return (
    Array.isArray(position) &&
    position.length >= 2 &&
    position.every((number) => typeof number === 'number')
  );
}

function nameOf(feature: unknown, place: string): string {
  const properties =
    isRecord(feature) && isRecord(feature['properties']) ? feature['properties'] : {};
  const id = properties['id'] ?? (isRecord(feature) ? feature['id'] : undefined);
  return typeof id === 'string' ? `site ${id}` : place;
}

function isRecord(value: unknown): value is Json {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
