import type { AnySite } from '../site-rows.js';

/** What a person typed into the form of a site: texts by field. A fact left empty is unknown. */
export type Fields = Readonly<Record<string, string>>;

/** How a field stands in the campus file. */
type Kind = 'text' | 'number' | 'optional text' | 'fact' | 'yes or no' | 'flag' | 'list' | 'json';

const FACT_KINDS: Readonly<Record<string, Kind>> = { truckAccess: 'yes or no' };

const CANDIDATE: Readonly<Record<string, Kind>> = {
  ...{ name: 'text', zone: 'text', areaSqFt: 'number', areaConfirmed: 'flag' },
  ...{ buildTypes: 'list', earliest: 'optional text', latest: 'optional text' },
  ...{ costFactor: 'number', gates: 'json', boundary: 'json' },
};

const EXISTING: Readonly<Record<string, Kind>> = {
  ...{ name: 'text', zone: 'text', areaSqFt: 'number', areaConfirmed: 'flag' },
  ...{ buildType: 'text', plantedCalendarYear: 'number', gates: 'json', boundary: 'json' },
};

/** The fields of a site in the order of the form, facts as `facts.ph`. */
function kindsOf(site: AnySite): ReadonlyMap<string, Kind> {
  const own = 'buildTypes' in site ? CANDIDATE : EXISTING;
  const facts = Object.keys(site.facts).map(
    (key) => [`facts.${key}`, FACT_KINDS[key] ?? 'fact'] as const,
  );
  return new Map<string, Kind>([...Object.entries(own), ...facts]);
}

/** A site as the texts of its form. */
export function fieldsOf(site: AnySite): Fields {
  return Object.fromEntries(
    [...kindsOf(site)].map(([field, kind]) => [field, textOf(kind, valueAt(site, field))]),
  );
}

/**
 * The site with what was typed put in. What is no number stays the text that it is, so that the api
 * can say what is wrong with it.
 */
export function siteWith(site: AnySite, fields: Fields): AnySite {
  const changed: Record<string, unknown> = { ...site };
  const facts: Record<string, unknown> = { ...site.facts };
  const before = fieldsOf(site);
  for (const [field, kind] of kindsOf(site)) {
    const text = fields[field];
    if (text === undefined || text === before[field]) continue;
    const value = valueOf(kind, text);
    if (field.startsWith('facts.')) facts[field.slice('facts.'.length)] = value;
    else if (value === undefined) delete changed[field];
    else changed[field] = value;
  }
  return { ...changed, facts } as unknown as AnySite;
}

function valueAt(site: AnySite, field: string): unknown {
  if (field.startsWith('facts.')) return site.facts[field.slice(6) as keyof AnySite['facts']];
  return (site as unknown as Record<string, unknown>)[field];
}

function textOf(kind: Kind, value: unknown): string {
  if (value === undefined || value === 'unknown') return '';
  if (kind === 'list') return (value as readonly string[]).join(', ');
  if (kind === 'json') return JSON.stringify(value);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return typeof value === 'number' ? String(value) : (value as string);
}

function valueOf(kind: Kind, text: string): unknown {
  const trimmed = text.trim();
  switch (kind) {
    case 'text':
      return trimmed;
    case 'optional text':
      return trimmed === '' ? undefined : trimmed;
    case 'number':
      return numberOr(trimmed);
    case 'fact':
      return trimmed === '' ? 'unknown' : numberOr(trimmed);
    case 'yes or no':
      return trimmed === '' ? 'unknown' : trimmed === 'yes';
    case 'flag':
      return trimmed === 'yes' ? true : undefined;
    case 'list':
      return trimmed.split(/\s*,\s*/).filter((item) => item !== '');
    case 'json':
      return jsonOr(trimmed);
  }
}

/** `1,200` is 1200; what is no number stays text. */
function numberOr(text: string): number | string {
  const plain = text.replaceAll(',', '');
  return plain !== '' && Number.isFinite(Number(plain)) ? Number(plain) : text;
}

/** A GeoJSON feature or collection of one gives its geometry; what is no JSON stays text. */
function jsonOr(text: string): unknown {
  try {
    return geometryOf(JSON.parse(text));
  } catch {
    return text;
  }
}

function geometryOf(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value;
  if ('geometry' in value) return value.geometry;
  if ('features' in value && Array.isArray(value.features) && value.features.length === 1) {
    return geometryOf(value.features[0]);
  }
  return value;
}

/** One field of which two people made something different, or only one of them. */
export interface FieldDifference {
  readonly field: string;
  readonly base: string;
  readonly theirs: string;
  readonly mine: string;
}

/** Fields in which the two versions of a site differ. */
export function differences(
  base: Fields,
  theirs: Fields,
  mine: Fields,
): readonly FieldDifference[] {
  return Object.keys({ ...theirs, ...mine }).flatMap((field) => {
    const row = {
      field,
      base: base[field] ?? '',
      theirs: theirs[field] ?? '',
      mine: mine[field] ?? '',
    };
    return row.theirs === row.mine ? [] : [row];
  });
}

/** Whose text stands where only one of the two changed it; their text where both did. */
export function usualChoice({ base, theirs, mine }: FieldDifference): 'theirs' | 'mine' {
  return theirs === base && mine !== base ? 'mine' : 'theirs';
}
