import { area } from '@turf/area';
import { describe, expect, test } from 'vitest';
import { readGeoJson } from '#exchange/geojson/read-geojson.js';
import { rightHanded } from '#exchange/geojson/winding.js';
import { smallCampus } from '../support/cli/small-campus.js';
import { demoFile, dryRun, exported } from '../support/exchange/merged.js';

const SQUARE_FEET_PER_SQUARE_METER = 1 / 0.3048 ** 2;

interface Collection {
  readonly features: {
    readonly id: string;
    readonly geometry: { readonly type: 'Polygon'; readonly coordinates: number[][][] };
    readonly properties: Record<string, unknown>;
  }[];
}

const file = demoFile();

async function written(): Promise<Collection> {
  const bytes = await exported({ file, format: 'geojson' });
  return JSON.parse(new TextDecoder().decode(bytes)) as Collection;
}

const feature = (geometry: object, properties: object = { id: 'S-1' }) => ({
  type: 'FeatureCollection',
  features: [{ type: 'Feature', geometry, properties }],
});
const asText = (document: object) => JSON.stringify(document);

describe('GeoJSON that we write', () => {
  test('is measured by another library as the areas that the campus states', async () => {
    const { features } = await written();
    expect(features).toHaveLength(file.candidateSites.length + file.existingSites.length);
    for (const { geometry, properties } of features) {
      const ratio = (area(geometry) * SQUARE_FEET_PER_SQUARE_METER) / Number(properties.area_sf);
      expect(Math.abs(ratio - 1)).toBeLessThan(0.06);
    }
  });

  test('runs by the right hand and closes its rings (RFC 7946, 3.1.6)', async () => {
    const { features } = await written();
    for (const { geometry } of features) {
      const [outer = []] = geometry.coordinates;
      const steps = outer.slice(1).map((to, i) => {
        const [x = 0, y = 0] = outer[i] ?? [];
        return (to[0]! - x) * (to[1]! + y - 2 * 47.7);
      });
      expect(steps.reduce((a, b) => a + b, 0)).toBeLessThan(0);
      expect(outer.at(-1)).toEqual(outer[0]);
    }
  });
});

/** RFC 7946, appendix A.3, typed from the document: a polygon with a hole. */
const WITH_HOLE = [
  [
    [100, 0],
    [101, 0],
    [101, 1],
    [100, 1],
    [100, 0],
  ],
  [
    [100.8, 0.8],
    [100.8, 0.2],
    [100.2, 0.2],
    [100.2, 0.8],
    [100.8, 0.8],
  ],
];

/** RFC 7946, section 1.5, typed from the document: features of which only the last is a polygon. */
const SECTION_1_5 = {
  type: 'FeatureCollection',
  features: [
    {
      type: 'Feature',
      geometry: { type: 'Point', coordinates: [102, 0.5] },
      properties: { prop0: 'value0' },
    },
    {
      type: 'Feature',
      geometry: {
        type: 'LineString',
        coordinates: [
          [102, 0],
          [103, 1],
          [104, 0],
          [105, 1],
        ],
      },
      properties: { prop0: 'value0', prop1: 0 },
    },
    {
      type: 'Feature',
      geometry: {
        type: 'Polygon',
        coordinates: [
          [
            [100, 0],
            [101, 0],
            [101, 1],
            [100, 1],
            [100, 0],
          ],
        ],
      },
      properties: { prop0: 'value0', prop1: { this: 'that' } },
    },
  ],
};

describe('GeoJSON from outside', () => {
  test('of RFC 7946, section 1.5, is read: polygons are sites, points and lines are told', () => {
    const { rejected, rows } = readGeoJson(SECTION_1_5);
    expect(rejected.map(({ place }) => place)).toEqual(['feature 1', 'feature 2']);
    expect(rows.map(({ boundary }) => boundary)).toEqual([SECTION_1_5.features[2]!.geometry]);
  });

  test('of RFC 7946, appendix A.3, keeps its hole, whichever way its rings run', () => {
    expect(rightHanded(WITH_HOLE)).toEqual(WITH_HOLE);
    expect(rightHanded(WITH_HOLE.map((ring) => [...ring].reverse()))).toEqual(WITH_HOLE);
    const [row] = readGeoJson(feature({ type: 'Polygon', coordinates: WITH_HOLE })).rows;
    expect(row?.boundary).toEqual({ type: 'Polygon', coordinates: WITH_HOLE });
  });

  test('loses a height and takes a multipolygon of one piece', () => {
    const flat = [
      [
        [1, 2],
        [3, 4],
        [5, 7],
        [1, 2],
      ],
    ];
    const high = flat.map((ring) => ring.map((position) => [...position, 30]));
    const [row] = readGeoJson(feature({ type: 'MultiPolygon', coordinates: [high] })).rows;
    expect(row?.boundary).toEqual({ type: 'Polygon', coordinates: flat });
  });

  const small = smallCampus();
  const [site] = small.candidateSites;
  const ring = site!.boundary.coordinates[0]!;
  const drawn = (change: (position: readonly [number, number]) => number[]) =>
    asText(feature({ type: 'Polygon', coordinates: [ring.map(change)] }));

  test.each([
    ['swapped', drawn(([x, y]) => [y, x]), 'SITE-COORDINATES-SWAPPED'],
    ['projected', drawn(([x, y]) => [x * 111_320, y * 111_320]), 'SITE-COORDINATES-PROJECTED'],
    ['far away', drawn(([x, y]) => [-x, y]), 'SITE-FAR-FROM-CAMPUS'],
    [
      'open',
      asText(feature({ type: 'Polygon', coordinates: [ring.slice(0, -1)] })),
      'SITE-RING-UNCLOSED',
    ],
    [
      'in pieces',
      asText(feature({ type: 'MultiPolygon', coordinates: [[ring], [ring]] })),
      'GEOJSON-GEOMETRY',
    ],
    ['a point', asText(feature({ type: 'Point', coordinates: ring[0]! })), 'GEOJSON-GEOMETRY'],
  ])('with an outline that is %s is rejected with the likely cause', async (_, text, code) => {
    const report = await dryRun(text, small);
    expect(report).toMatchObject({ canApply: false, counts: { rejected: 1 } });
    const [problem] = report.rows[0]!.problems;
    expect(problem).toMatchObject({ code, record: 'site S-1', field: 'geometry' });
    expect(problem?.remedy).not.toBe('');
  });

  test('in another system of coordinates is refused as a whole', async () => {
    const crs = { type: 'name', properties: { name: 'urn:ogc:def:crs:EPSG::3857' } };
    const { problems } = await dryRun(asText({ ...SECTION_1_5, crs }), small);
    expect(problems).toMatchObject([{ code: 'GEOJSON-PROJECTED', field: 'crs' }]);
  });
});
