import type { CampusFile } from '#contracts/campus-file.schema.js';

export type CandidateRecord = CampusFile['candidateSites'][number];
export type ExistingRecord = CampusFile['existingSites'][number];

/** A site of a campus file, with the list that it stands in. */
export type SiteRecord =
  | { readonly stage: 'candidate'; readonly site: CandidateRecord }
  | { readonly stage: 'existing'; readonly site: ExistingRecord };

export function siteRecords({ candidateSites, existingSites }: CampusFile): SiteRecord[] {
  return [
    ...candidateSites.map((site) => ({ stage: 'candidate' as const, site })),
    ...existingSites.map((site) => ({ stage: 'existing' as const, site })),
  ];
}
