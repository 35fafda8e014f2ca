import { readFileSync } from 'node:fs';
import type { CampusFile } from '#contracts/campus-file.schema.js';
import type { Campus } from '#domain/campus.js';
import { loadCampusFile } from '#planning/load-campus-file.js';
import { seededRandom } from '#units/random.js';
import { rulesOf } from './generated-rules.js';
import { sitesOf, zonesOf } from './generated-sites.js';
import { supplyOf } from './generated-supply.js';
import { Draw, type ProgramShape } from './shape.js';

/**
 * A campus file of so many sites and years in the demo's shape: its calendar, build types, care,
 * prices and criteria, with sites, gates, works, promises and supplies drawn from the seed. The same
 * shape gives the same file.
 */
export function generatedFile(shape: ProgramShape): CampusFile {
  const demo = JSON.parse(readFileSync('seeds/demo-strained.json', 'utf8')) as CampusFile;
  const draw = new Draw(seededRandom(shape.seed));
  const typeIds = demo.buildTypes.map(({ id }) => id);
  const candidateSites = sitesOf(shape, draw, typeIds);
  return {
    ...demo,
    id: nameOf(shape),
    name: 'Generated campus',
    program: `Generated program, ${shape.kind}`,
    calendar: { ...demo.calendar, horizonYears: shape.years },
    zones: zonesOf(shape),
    candidateSites,
    existingSites: [],
    ...supplyOf(shape, draw, demo),
    ...rulesOf(shape, draw, candidateSites),
    handPlacements: [],
  };
}

/** `36-sites-30-years-tight-seed-1`, or `120-sites-4-types-50-years-...` where the types are given. */
export function nameOf({ sites, years, kind, seed, types }: ProgramShape): string {
  const each = types === undefined ? '' : `-${types}-types`;
  return `${sites}-sites${each}-${years}-years-${kind}-seed-${seed}`;
}

/** The campus of a generated file, read as a user's file is. */
export function generatedCampus(shape: ProgramShape): Campus {
  const load = loadCampusFile(JSON.stringify(generatedFile(shape)));
  if (load.ok) return load.campus;
  const [first] = load.problems.filter((p) => p.severity === 'error');
  throw new Error(`${nameOf(shape)} is no campus file: ${first?.record} ${first?.problem}`);
}
