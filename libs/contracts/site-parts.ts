import type { Campus } from '#domain/campus.js';
import { toCandidate, toExisting, toZone } from './conversion/sites.js';
import type { FileParts } from './reading/salvage.js';

/** Places of a campus with what was measured there, and the sites whose stated area was confirmed. */
export interface SiteParts extends Pick<
  Campus,
  'zones' | 'candidates' | 'existing' | 'exclusiveGroups' | 'overrides'
> {
  readonly confirmedAreas: ReadonlySet<string>;
  /** Undefined where it could not be read. */
  readonly dataDate: string | undefined;
}

export function sitePartsOf(parts: FileParts): SiteParts {
  const candidates = parts.candidateSites ?? [];
  const existing = parts.existingSites ?? [];
  const confirmed = [...candidates, ...existing].filter((site) => site.areaConfirmed === true);
  return {
    zones: (parts.zones ?? []).map(toZone),
    candidates: candidates.map(toCandidate),
    existing: existing.map(toExisting),
    exclusiveGroups: parts.exclusiveGroups ?? [],
    overrides: parts.overrides ?? [],
    dataDate: parts.dataDate,
    confirmedAreas: new Set(confirmed.map(({ id }) => id)),
  };
}
