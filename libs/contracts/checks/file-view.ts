import type { Calendar } from '#domain/calendar.js';
import type { CampusFile } from '../campus-file.schema.js';
import { UNKNOWN_TEXT } from '../campus-file/values.js';
import { toCalendar } from '../conversion/calendar.js';
import { isRecord } from '../reading/record-names.js';
import type { FileParts } from '../reading/salvage.js';

export type CandidatePart = CampusFile['candidateSites'][number];
export type ExistingPart = CampusFile['existingSites'][number];
export type SitePart = CandidatePart | ExistingPart;
export type CalendarPart = CampusFile['calendar'];
export type FundPart = CampusFile['funds'][number];
export type CommitmentPart = CampusFile['commitments'][number];

const LISTS = [
  'zones',
  'candidateSites',
  'existingSites',
  'buildTypes',
  'pools',
  'workDays',
  'positions',
  'funds',
  'standingCosts',
  'construction',
  'precedence',
  'exclusiveGroups',
  'commitments',
  'handPlacements',
] as const;

export type ListName = (typeof LISTS)[number];

/** Ids that a file gives, unreadable records included, so that a reference to one is not missing. */
export interface GivenIds {
  readonly zones: ReadonlySet<string>;
  readonly candidates: ReadonlySet<string>;
  readonly existing: ReadonlySet<string>;
  readonly sites: ReadonlySet<string>;
  readonly buildTypes: ReadonlySet<string>;
  readonly positions: ReadonlySet<string>;
  readonly funds: ReadonlySet<string>;
  readonly laterChanges: ReadonlySet<string>;
  /** Undefined where the calendar could not be read: then nothing is said about seasons. */
  readonly seasons: ReadonlySet<string> | undefined;
}

/** What the checks look at: every part that could be read, a missing list as an empty one. */
export type FileView = { readonly [List in ListName]: CampusFile[List] } & {
  readonly calendar: CalendarPart | undefined;
  /** The calendar in the planner's own form. */
  readonly time: Calendar | undefined;
  readonly dataDate: string | undefined;
  readonly care: CampusFile['care'] | undefined;
  readonly compost: CampusFile['compost'] | undefined;
  readonly benefit: CampusFile['benefit'] | undefined;
  readonly laterChanges: NonNullable<CampusFile['laterChanges']>;
  readonly published: CampusFile['published'];
  readonly escalationPercent: CampusFile['escalationPercent'] | undefined;
  readonly materialWastePercent: number | undefined;
  readonly weather: CampusFile['weather'];
  readonly suitabilityWeightsPercent: CampusFile['suitabilityWeightsPercent'];
  readonly hardAtCertaintyPercent: number;
  readonly ids: GivenIds;
  /** Sites whose lead was given in a form that could not be read: it is not unknown, but unread. */
  readonly unreadLead: ReadonlySet<string>;
};

export function fileView(parts: FileParts, document: Record<string, unknown>): FileView {
  const lists = Object.fromEntries(LISTS.map((name) => [name, parts[name] ?? []]));
  return {
    ...(lists as { [List in ListName]: CampusFile[List] }),
    calendar: parts.calendar,
    time: parts.calendar && toCalendar(parts.calendar),
    dataDate: parts.dataDate,
    care: parts.care,
    compost: parts.compost,
    benefit: parts.benefit,
    laterChanges: parts.laterChanges ?? [],
    published: parts.published,
    escalationPercent: parts.escalationPercent,
    materialWastePercent: parts.materialWastePercent,
    weather: parts.weather,
    suitabilityWeightsPercent: parts.suitabilityWeightsPercent,
    hardAtCertaintyPercent: parts.hardAtCertaintyPercent ?? Infinity,
    ids: givenIds(parts, document),
    unreadLead: unreadLead(document),
  };
}

function unreadLead({ candidateSites }: Record<string, unknown>): Set<string> {
  const sites = Array.isArray(candidateSites) ? candidateSites.filter(isRecord) : [];
  const unread = sites.filter(({ facts }) => {
    const lead = isRecord(facts) ? facts.leadMgPerKg : undefined;
    return typeof lead !== 'number' && lead !== UNKNOWN_TEXT;
  });
  return new Set(unread.map(({ id }) => String(id)));
}

function givenIds(parts: FileParts, document: Record<string, unknown>): GivenIds {
  const candidates = idsIn(document.candidateSites);
  const existing = idsIn(document.existingSites);
  return {
    zones: idsIn(document.zones),
    candidates,
    existing,
    sites: new Set([...candidates, ...existing]),
    buildTypes: idsIn(document.buildTypes),
    positions: idsIn(document.positions),
    funds: idsIn(document.funds),
    laterChanges: idsIn(document.laterChanges),
    seasons: parts.calendar && idsIn(parts.calendar.seasons),
  };
}

function idsIn(list: unknown): Set<string> {
  const records = Array.isArray(list) ? list.filter(isRecord) : [];
  return new Set(records.flatMap(({ id }) => (typeof id === 'string' ? [id] : [])));
}

/** Candidate and existing sites together. */
export function allSites(view: FileView): readonly SitePart[] {
  return [...view.candidateSites, ...view.existingSites];
}

/** First and last fiscal year in which a site may be prepared, as numbers. */
export function buildYears(time: Calendar): readonly [first: number, last: number] {
  return [time.firstYear, time.firstYear + time.horizonYears - 1];
}
