import { campusFileSchema, type CampusFile } from '../campus-file.schema.js';
import { UNKNOWN_TEXT } from '../campus-file/values.js';
import { issuesOf, type Issue } from './issues.js';
import { isRecord, valueAt, type Path } from './record-names.js';

/** Parts of a campus file that could be read, so that they can be checked beside what could not. */
export type FileParts = { readonly [Part in keyof CampusFile]?: CampusFile[Part] };

/** No file nests deeper than this; each round takes away one level of what cannot be read. */
const ROUNDS = 12;

/**
 * What is left of a document when everything unreadable is taken out, smallest part first: a fact
 * becomes unknown, a list loses its member, an optional field goes, at last the whole part. Values
 * that are merely out of range stay. The document itself is not changed.
 */
export function salvage(document: Record<string, unknown>): FileParts {
  const copy = structuredClone(document);
  for (let round = 0; round < ROUNDS; round += 1) {
    const parsed = campusFileSchema.safeParse(copy);
    const issues = parsed.success ? [] : issuesOf(parsed.error, copy).filter(isUnreadable);
    if (issues.length === 0) return copy;
    for (const issue of issues) mark(copy, placeToMend(issue));
    sweep(copy);
  }
  return {};
}

/** Parts that the checks compute with, so that their numbers must be within bounds as well. */
const COMPUTED: ReadonlySet<PropertyKey | undefined> = new Set(['calendar', 'funds', 'workDays']);

function isUnreadable({ kind, path }: Issue): boolean {
  if (kind === 'missing') return path.length > 1;
  if (COMPUTED.has(path[0])) return kind !== 'unknown-field';
  return !['below', 'above', 'unknown-field', 'id', 'key', 'whole'].includes(kind);
}

/** Lists and records that mean something only as a whole: half of one would raise false problems. */
const WHOLES: ReadonlySet<PropertyKey> = new Set([
  'seasons',
  'inflows',
  'yearlyInflows',
  'criteria',
  'suitabilityWeightsPercent',
  'weather',
  'rainTank',
  'coordinates',
  'componentShares',
  'seasonShares',
  'harvestSeasonShares',
  'hours',
  'firstYearHours',
  'madeCubicYards',
]);

function placeToMend({ kind, path }: Issue): Path {
  if (path[2] === 'facts' && path.length > 3) return path.slice(0, 4);
  if (path[2] === 'boundary') return path.slice(0, 3);
  const container = kind === 'missing' ? path.slice(0, -1) : path;
  const whole = container.findIndex((key) => WHOLES.has(key));
  if (whole >= 0) return container.slice(0, whole + 1);
  const deepest = container.findLastIndex((key) => typeof key === 'number');
  return deepest > 1 ? container.slice(0, deepest + 1) : container;
}

const TAKEN_OUT = Symbol('taken out');

function mark(document: unknown, path: Path): void {
  const key = path.at(-1);
  const holder = valueAt(document, path.slice(0, -1));
  if (key === undefined || typeof holder !== 'object' || holder === null) return;
  (holder as Record<PropertyKey, unknown>)[key] = inPlaceOf(path);
}

/** A boundary without rings is one that nothing is said about. */
function inPlaceOf(path: Path): unknown {
  if (path[2] === 'facts' && path.length === 4) return UNKNOWN_TEXT;
  if (path[2] === 'boundary' && path.length === 3) return { type: 'Polygon', coordinates: [] };
  return TAKEN_OUT;
}

function sweep(value: unknown): void {
  if (Array.isArray(value)) {
    const kept = value.filter((member) => member !== TAKEN_OUT);
    value.splice(0, value.length, ...(kept as unknown[]));
    value.forEach(sweep);
  } else if (isRecord(value)) {
    for (const [key, member] of Object.entries(value)) {
      if (member === TAKEN_OUT) delete value[key];
      else sweep(member);
    }
  }
}
