import type { CampusFile, CandidateSite } from '../../api.js';

/** What a person must give of a site so that it can be planned; all else starts as unknown. */
export interface SixFacts {
  readonly id: string;
  readonly name: string;
  readonly zone: string;
  readonly areaSqFt: string;
  readonly buildType: string;
  readonly earliest: string;
  /** Capital against what the build type usually costs; 1 is usual. */
  readonly costFactor: string;
  /** Kinds of gates that are known to pass; the others are unknown. */
  readonly passed: readonly string[];
  /** Empty: a square stands in. */
  readonly boundary: string;
}

export const noFacts: SixFacts = {
  ...{ id: '', name: '', zone: '', areaSqFt: '', buildType: '', earliest: '' },
  ...{ costFactor: '1', passed: [], boundary: '' },
};

/** Gates that every site is asked about first. */
export const FIRST_GATES = ['contamination', 'utilities', 'construction', 'access'] as const;

/** Words that a new site is written with. */
export interface NewSiteWords {
  readonly passNote: string;
  readonly unknownNote: string;
  readonly clearedBy: Readonly<Record<(typeof FIRST_GATES)[number], string>>;
  readonly standIn: string;
}

/** A candidate site of six facts, as the campus file has it. What is no number is left for the api to judge. */
export function newSite(facts: SixFacts, file: CampusFile, words: NewSiteWords): CandidateSite {
  const drawn = facts.boundary.trim();
  const site = {
    id: facts.id.trim(),
    name: facts.name.trim(),
    zone: facts.zone,
    boundary: drawn === '' ? squareIn(file, facts) : parsed(drawn),
    areaSqFt: numberOr(facts.areaSqFt),
    facts: Object.fromEntries(
      Object.keys(file.candidateSites[0]?.facts ?? usualFacts).map((key) => [key, 'unknown']),
    ),
    gates: FIRST_GATES.map((kind) => gateOf(kind, facts, words)),
    evidence: [],
    buildTypes: [facts.buildType],
    ...(facts.earliest === '' ? {} : { earliest: facts.earliest }),
    costFactor: numberOr(facts.costFactor),
    notes: drawn === '' ? [words.standIn] : [],
  };
  return site as unknown as CandidateSite;
}

const usualFacts = {
  ...{ cover: 0, soil: 0, ph: 0, organicMatterPercent: 0, leadMgPerKg: 0, slopePercent: 0 },
  ...{ sunHours: 0, walkersPerDay: 0, waterFeet: 0, kitchenFeet: 0, truckAccess: 0 },
  rootProtectedShare: 0,
};

function gateOf(kind: (typeof FIRST_GATES)[number], facts: SixFacts, words: NewSiteWords) {
  const isPassed = facts.passed.includes(kind);
  return {
    kind,
    status: isPassed ? 'pass' : 'unknown',
    note: isPassed ? words.passNote : words.unknownNote,
    bars: kind === 'contamination' ? 'edible' : 'all',
    clearedBy: words.clearedBy[kind],
  };
}

/** Feet to a degree of latitude on a sphere of mean radius: near enough for a square that stands in. */
const FEET_PER_DEGREE = 364_813;

/** A square of the stated area at the middle of the zone, until the boundary is drawn. */
function squareIn(file: CampusFile, facts: SixFacts) {
  const zone = file.zones.find(({ id }) => id === facts.zone);
  const place =
    zone?.boundary ?? file.candidateSites[0]?.boundary ?? file.existingSites[0]?.boundary;
  const ring = (place?.coordinates[0] ?? [[0, 0]]) as unknown as readonly [number, number][];
  const mean = (axis: 0 | 1): number =>
    ring.reduce((sum, corner) => sum + corner[axis], 0) / ring.length;
  const [longitude, latitude] = [mean(0), mean(1)];
  const half = Math.sqrt(Math.max(1, Number(numberOr(facts.areaSqFt)) || 1)) / 2 / FEET_PER_DEGREE;
  const wide = half / Math.cos((latitude * Math.PI) / 180);
  const corner = (right: number, up: number): [number, number] => [
    Number((longitude + right * wide).toFixed(8)),
    Number((latitude + up * half).toFixed(8)),
  ];
  const first = corner(-1, -1);
  return {
    type: 'Polygon',
    coordinates: [[first, corner(1, -1), corner(1, 1), corner(-1, 1), first]],
  };
}

function numberOr(text: string): number | string {
  const plain = text.trim().replaceAll(',', '');
  return plain !== '' && Number.isFinite(Number(plain)) ? Number(plain) : text;
}

function parsed(text: string): unknown {
  try {
    const value = JSON.parse(text) as { geometry?: unknown };
    return value.geometry ?? value;
  } catch {
    return text;
  }
}
