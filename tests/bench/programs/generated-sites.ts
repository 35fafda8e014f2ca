import type { CampusFile } from '#contracts/campus-file.schema.js';
import type { Draw, ProgramShape } from './shape.js';

type SitePart = CampusFile['candidateSites'][number];
type GatePart = SitePart['gates'][number];

/** Feet to a degree of latitude, and of longitude at 47.7 north: near enough for squares on a grid. */
const FEET_PER_DEGREE_NORTH = 364_800;
const FEET_PER_DEGREE_EAST = 246_000;
/** Open ocean, as in the demo. */
const ORIGIN = { east: -38, north: 47.7 };
const GRID_FEET = 250;
const SITES_PER_ZONE = 6;
const TYPICAL_SQ_FT = 8000;

export const FIRST_YEAR = 2028;

export function zonesOf({ sites }: ProgramShape): CampusFile['zones'] {
  const count = Math.max(3, Math.ceil(sites / SITES_PER_ZONE));
  return Array.from({ length: count }, (_, i) => ({ id: `zone-${i + 1}`, name: `Zone ${i + 1}` }));
}

export function sitesOf(shape: ProgramShape, draw: Draw, typeIds: readonly string[]): SitePart[] {
  const zones = zonesOf(shape);
  return Array.from({ length: shape.sites }, (_, place) => {
    const zone = zones[place % zones.length]?.id ?? '';
    const areaSqFt = areaOf(shape, draw);
    return {
      id: `S${String(place + 1).padStart(3, '0')}`,
      name: `Site ${place + 1}`,
      zone,
      boundary: squareAt(place, areaSqFt),
      areaSqFt,
      facts: factsOf(draw),
      gates: gatesOf(shape, draw),
      evidence: [],
      buildTypes: draw.some(typeIds, shape.types ?? draw.whole(2, 4)),
      ...windowOf(shape, draw),
      costFactor: shape.kind === 'knife-edge' ? 1 : draw.pick([1, 1, 1, 1.05, 1.1, 1.2]),
      notes: [],
    };
  });
}

/** The demo's sites run from 2,600 to 17,500 sf, most of them between 4,000 and 11,000. */
function areaOf({ kind }: ProgramShape, draw: Draw): number {
  if (kind === 'knife-edge') return Math.round(TYPICAL_SQ_FT * draw.between(0.98, 1.02));
  const skewed = 2600 + 13_000 * ((draw.share() + draw.share() * draw.share()) / 2);
  return Math.round(skewed / 100) * 100;
}

function squareAt(place: number, areaSqFt: number): SitePart['boundary'] {
  const side = Math.sqrt(areaSqFt);
  const columns = 20;
  const west = (place % columns) * GRID_FEET;
  const south = Math.floor(place / columns) * GRID_FEET;
  const at = (x: number, y: number): [number, number] => [
    rounded(ORIGIN.east + x / FEET_PER_DEGREE_EAST),
    rounded(ORIGIN.north + y / FEET_PER_DEGREE_NORTH),
  ];
  const [east, north] = [west + side, south + side];
  const ring = [at(west, south), at(east, south), at(east, north), at(west, north)];
  return { type: 'Polygon', coordinates: [[...ring, at(west, south)]] };
}

function rounded(degrees: number): number {
  return Math.round(degrees * 1e7) / 1e7;
}

function factsOf(draw: Draw): SitePart['facts'] {
  return {
    cover: 'mown turf',
    soil: 'loam',
    ph: 7,
    organicMatterPercent: 3.5,
    leadMgPerKg: 50,
    slopePercent: draw.pick([1, 2, 3, 8, 11]),
    sunHours: draw.pick([6, 7, 8, 9]),
    walkersPerDay: draw.chance(0.04) ? 'unknown' : draw.whole(35, 480) * 10,
    waterFeet: 40,
    kitchenFeet: draw.whole(10, 120) * 10,
    truckAccess: true,
    rootProtectedShare: 0,
  };
}

/** As in the demo, about four sites in ten wait for a gate, and a few stay barred for good. */
function gatesOf({ years }: ProgramShape, draw: Draw): GatePart[] {
  const gates: GatePart[] = [];
  if (draw.chance(0.3)) {
    gates.push(gate('utilities', 'all', { clearFrom: draw.whole(0, Math.min(8, years - 1)) }));
  }
  if (draw.chance(0.15)) {
    gates.push(gate('contamination', 'edible', { clearFrom: draw.whole(1, Math.min(6, years)) }));
  }
  if (draw.chance(0.06)) gates.push({ ...gate('contamination', 'edible'), status: 'fail' });
  if (draw.chance(0.02)) gates.push(gate('heritage', 'all'));
  return gates;
}

/** An unknown gate; where no year is given, it stays closed. */
function gate(
  kind: GatePart['kind'],
  bars: GatePart['bars'],
  { clearFrom }: { readonly clearFrom?: number } = {},
): GatePart {
  return {
    kind,
    status: 'unknown',
    note: 'Generated for a bench.',
    bars,
    clearedBy: 'Whoever decides on it.',
    ...(clearFrom === undefined ? {} : { plannedClearFrom: `FY${FIRST_YEAR + clearFrom}` }),
  };
}

function windowOf({ years }: ProgramShape, draw: Draw): Pick<SitePart, 'earliest' | 'latest'> {
  const year = draw.whole(2, Math.max(2, Math.min(8, years - 1)));
  if (draw.chance(0.1)) return { earliest: `FY${FIRST_YEAR + year}` };
  if (draw.chance(0.04)) return { latest: `FY${FIRST_YEAR + Math.floor(years / 2)}` };
  return {};
}
