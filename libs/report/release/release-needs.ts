/** What a document must hold before it may be called final. */
export interface ReleaseNeeds {
  /** Least figures, each with its words and data table. */
  readonly figures: number;
  /** Whether cautions stand in it. */
  readonly cautions: 'boxed' | 'none';
  /** Whether costs stand in it, so that their class must. */
  readonly costs: 'class 5' | 'none';
  readonly signatures: 'asked for' | 'none';
  /** Sites whose gates must all be passed first. */
  readonly gates: 'its site' | 'first sites' | 'none';
  /** Whether it speaks to givers, to whom nothing is promised. */
  readonly readers: 'givers' | 'staff';
  /** Whether it tells what happened, so that actual values must be on record. */
  readonly actuals: 'told' | 'none';
}

const PLAIN: ReleaseNeeds = {
  figures: 0,
  cautions: 'boxed',
  costs: 'none',
  signatures: 'none',
  gates: 'none',
  readers: 'staff',
  actuals: 'none',
};

/** By kind of document. */
export const RELEASE_NEEDS = {
  'administration-brief': { ...PLAIN, figures: 1, costs: 'class 5', gates: 'first sites' },
  'long-range-plan': { ...PLAIN, figures: 2, costs: 'class 5' },
  'donor-prospectus': {
    ...PLAIN,
    figures: 1,
    cautions: 'none',
    costs: 'class 5',
    readers: 'givers',
  },
  'staffing-request': { ...PLAIN, figures: 1, costs: 'class 5', signatures: 'asked for' },
  'site-dossier': { ...PLAIN, figures: 2, costs: 'class 5', gates: 'its site' },
  'materials-order': { ...PLAIN, costs: 'class 5', gates: 'first sites' },
  'work-calendar': { ...PLAIN, gates: 'first sites' },
  'annual-report': { ...PLAIN, costs: 'class 5', actuals: 'told' },
} as const satisfies Record<string, ReleaseNeeds>;
