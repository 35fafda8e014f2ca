export const BUNDLE_FORMAT = 'campus-plan/bundle';

/** The table of contents of a bundle, `bundle.json`. */
export interface Manifest {
  readonly format: typeof BUNDLE_FORMAT;
  readonly formatVersion: 1;
  readonly campus: BundlePart;
  readonly plans: readonly BundlePlan[];
}

export interface BundlePart {
  readonly file: string;
  /** Of the canonical JSON text: tells a damaged or exchanged part. */
  readonly digest: string;
}

export interface BundlePlan extends BundlePart {
  readonly name: string;
  /**
   * What the documents of the plan are made from beside the campus and the plan: equal inputs give
   * equal bytes.
   */
  readonly documents: { readonly createdAt: string };
}

export const MANIFEST_NAME = 'bundle.json';
