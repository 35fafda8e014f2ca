import type { CampusFile, HandPlacement } from '../../api.js';

/** What a person wants to try, as it is typed; kept until it is tried. */
export interface Wish {
  readonly site: string;
  readonly kind: 'fixed' | 'forbidden' | 'never' | 'free';
  readonly year: string;
  readonly reason: string;
}

/** The hand placements of the site with the wish put in. */
export function placementsWith(wish: Wish, file: CampusFile): readonly HandPlacement[] {
  const own = file.handPlacements
    .filter(({ site }) => site === wish.site)
    .map(({ site: _site, ...placement }) => placement);
  const { year, reason } = wish;
  switch (wish.kind) {
    case 'free':
      return [];
    case 'fixed':
      return [{ kind: 'fixed', year, reason }];
    case 'never':
      return [{ kind: 'forbidden', reason }];
    case 'forbidden':
      return [
        ...own.filter((row) => row.kind === 'forbidden' && row.year !== year && row.year),
        { kind: 'forbidden', year, reason },
      ];
  }
}
