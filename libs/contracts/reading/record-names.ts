/** Path of a value in a parsed document. */
export type Path = readonly PropertyKey[];

const NOUNS: Readonly<Record<string, string>> = {
  zones: 'zone',
  candidateSites: 'site',
  existingSites: 'site',
  buildTypes: 'build type',
  pools: 'pool',
  workDays: 'work day',
  positions: 'position',
  funds: 'fund',
  standingCosts: 'standing cost',
  construction: 'works',
  precedence: 'precedence',
  exclusiveGroups: 'exclusive group',
  commitments: 'commitment',
  handPlacements: 'hand placement',
  laterChanges: 'later change',
};

/** Parts that are one record rather than a list. */
const SINGLES: Readonly<Record<string, string>> = {
  calendar: 'calendar',
  compost: 'compost',
  weather: 'weather',
  benefit: 'benefit',
  published: 'published plan',
  care: 'care',
  escalationPercent: 'escalation',
};

export const THE_FILE = 'the file';

export function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

export function valueAt(document: unknown, path: Path): unknown {
  let value = document;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  return value;
}

/** The record that a path lies in, as a reader would name it, and the rest of the path as a field. */
export function recordAndField(document: unknown, path: Path): { record: string; field: string } {
  const [part, place] = path;
  if (typeof part !== 'string') return { record: THE_FILE, field: '' };
  if (part === 'care' && path.length > 1) {
    return { record: `care ${String(place)}`, field: fieldText(document, path, 2) };
  }
  if (part === 'benefit' && place === 'criteria' && typeof path[2] === 'number') {
    const name = label(valueAt(document, path.slice(0, 3)), path[2]);
    return { record: `benefit criterion ${name}`, field: fieldText(document, path, 3) };
  }
  const single = SINGLES[part];
  if (single !== undefined && path.length > 1) {
    return { record: single, field: fieldText(document, path, 1) };
  }
  if (part === 'plan' && typeof path[2] === 'number') {
    return { record: `${String(place)} row ${path[2] + 1}`, field: fieldText(document, path, 3) };
  }
  const noun = NOUNS[part];
  if (noun === undefined || typeof place !== 'number') {
    return { record: THE_FILE, field: fieldText(document, path, 0) };
  }
  const name = label(valueAt(document, path.slice(0, 2)), place);
  return { record: `${noun} ${name}`, field: fieldText(document, path, 2) };
}

/** `gates[contamination].status`: list members are named by what they are, not only by their place. */
function fieldText(document: unknown, path: Path, from: number): string {
  let field = '';
  for (let index = from; index < path.length; index += 1) {
    const key = path[index];
    if (typeof key === 'number') {
      field += `[${label(valueAt(document, path.slice(0, index + 1)), key)}]`;
    } else {
      field += `${field === '' ? '' : '.'}${String(key)}`;
    }
  }
  return field;
}

function label(value: unknown, place: number): string {
  if (isRecord(value)) {
    if (typeof value.before === 'string' && typeof value.after === 'string') {
      return `${value.before} before ${value.after}`;
    }
    for (const key of ['id', 'kind', 'fact', 'coefficient', 'site', 'name', 'year', 'from']) {
      const name = value[key];
      if (typeof name === 'string' && name !== '' && isNaming(value, key)) return name;
    }
  }
  return `#${place + 1}`;
}

/** A hand placement has a kind too, but its site says more. */
function isNaming(value: Record<string, unknown>, key: string): boolean {
  return key !== 'kind' || !('site' in value);
}
