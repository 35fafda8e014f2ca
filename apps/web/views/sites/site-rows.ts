import type { CostBand, PlanOverview } from '#explain/overview/plan-overview.js';
import type { CampusFile, CandidateSite, ExistingSite } from '../../api.js';

export type AnySite = CandidateSite | ExistingSite;

/** A site as the list and the map show it. */
export interface SiteRow {
  readonly id: string;
  readonly name: string;
  readonly zone: string;
  readonly areaSqFt: number;
  readonly stage: 'planned' | 'not planned' | 'planted';
  /** Year in which the plan prepares it, or the calendar year in which it was planted. */
  readonly year: string | null;
  readonly cost: CostBand | null;
  readonly unknownGates: number;
  readonly failedGates: number;
  readonly works: readonly string[];
  readonly site: AnySite;
}

/** Every site of the campus, with what the plan makes of it; null: there is no plan yet. */
export function siteRows(file: CampusFile, overview: PlanOverview | null): readonly SiteRow[] {
  const planned = new Map(
    (overview?.years ?? []).flatMap(({ year, sites }) =>
      sites.map((site) => [site.site, { year, cost: site.cost }] as const),
    ),
  );
  const zones = new Map(file.zones.map(({ id, name }) => [id, name]));
  const shared = (site: AnySite) => ({
    site,
    id: site.id,
    name: site.name,
    zone: zones.get(site.zone) ?? site.zone,
    areaSqFt: site.areaSqFt,
    unknownGates: site.gates.filter(({ status }) => status === 'unknown').length,
    failedGates: site.gates.filter(({ status }) => status === 'fail').length,
    works: file.construction.filter(({ sites }) => sites.includes(site.id)).map(({ name }) => name),
  });
  return [
    ...file.candidateSites.map((site) => {
      const place = planned.get(site.id);
      const stage = place === undefined ? ('not planned' as const) : ('planned' as const);
      return { ...shared(site), stage, year: place?.year ?? null, cost: place?.cost ?? null };
    }),
    ...file.existingSites.map((site) => ({
      ...shared(site),
      stage: 'planted' as const,
      year: String(site.plantedCalendarYear),
      cost: null,
    })),
  ];
}

export interface Filter {
  readonly text: string;
  readonly zone: string;
  readonly show: 'all' | SiteRow['stage'] | 'open';
}

export const noFilter: Filter = { text: '', zone: '', show: 'all' };

export function filtered(rows: readonly SiteRow[], filter: Filter): readonly SiteRow[] {
  const text = filter.text.trim().toLowerCase();
  return rows.filter(
    (row) =>
      (text === '' || `${row.id} ${row.name}`.toLowerCase().includes(text)) &&
      (filter.zone === '' || row.zone === filter.zone) &&
      isShown(row, filter.show),
  );
}

function isShown(row: SiteRow, show: Filter['show']): boolean {
  if (show === 'all') return true;
  if (show === 'open') return row.unknownGates > 0;
  return row.stage === show;
}

export const SORT_KEYS = ['id', 'zone', 'areaSqFt', 'year', 'cost', 'unknownGates'] as const;
export type SortKey = (typeof SORT_KEYS)[number];
export interface Sort {
  readonly key: SortKey;
  readonly order: 'ascending' | 'descending';
}

const collator = new Intl.Collator('en', { numeric: true });

/** Sorted by one key; what has no value comes last either way. */
export function sorted(rows: readonly SiteRow[], { key, order }: Sort): readonly SiteRow[] {
  const sign = order === 'ascending' ? 1 : -1;
  return [...rows].sort((a, b) => {
    const [left, right] = [valueOf(a, key), valueOf(b, key)];
    if (left === null || right === null) return left === right ? 0 : left === null ? 1 : -1;
    return sign * collator.compare(String(left), String(right)) || collator.compare(a.id, b.id);
  });
}

function valueOf(row: SiteRow, key: SortKey): string | number | null {
  return key === 'cost' ? (row.cost?.likely ?? null) : row[key];
}
