import type { Campus } from '#domain/campus.js';
import { anError, aWarning, type Problem } from '#domain/problem.js';
import type { Site } from '#domain/site.js';
import type { SiteTree } from '#domain/survey.js';
import { coefficient } from '../defaults/coefficients.js';
import { inputFindings } from '../defaults/input-findings.js';
import { overridesAt } from '../defaults/overrides-at.js';
import { distanceFt } from '../geometry/distance.js';
import { rootProtectionOfSite } from '../geometry/root-protection.js';
import { isMeasurable } from './boundaries.js';
import { campusPosition, sitesOf, type CampusPlaces } from './places.js';

/** Stated and measured shares in root protection farther apart than this are told. */
const SHARE_TOLERANCE = 0.05;

/** A tree farther than this from every corner of its site is misplaced: no roots reach so far. */
const FARTHEST_FEET = 1000;

/** Trees that cannot be where or what they are said to be, and shares that they contradict. */
export function treeProblems(places: CampusPlaces): Problem[] {
  const near = campusPosition(places);
  return sitesOf(places)
    .filter(({ boundary }) => isMeasurable(boundary, near))
    .flatMap((site) => {
      const trees = (site.trees ?? []).flatMap((tree) => problemsOfTree(site, tree));
      return trees.some(({ severity }) => severity === 'error')
        ? trees
        : [...trees, ...shareProblems(places, site)];
    });
}

/**
 * Share of a site inside the root protection of its trees, to a hundredth of a percent; undefined
 * where they were not measured. The radius for each inch of trunk is the campus's own where it has one.
 */
export function measuredRootShare(
  campus: Pick<Campus, 'overrides'>,
  site: Site,
): number | undefined {
  if (site.trees === undefined) return undefined;
  const feetPerInch = coefficient('gate.root-radius', overridesAt(campus, site));
  const trees = site.trees.map((tree) => ({ ...tree, feetPerInch }));
  return Math.round(rootProtectionOfSite(site.boundary, trees).share * 10_000) / 10_000;
}

function problemsOfTree({ id, boundary }: Site, tree: SiteTree): Problem[] {
  const field = (part: keyof SiteTree) => `trees[${tree.name}].${part}`;
  const place = { record: `site ${id}` };
  const size = inputFindings({ trunkInches: tree.trunkInches }).map((finding) => {
    const at = { ...place, field: field('trunkInches'), value: tree.trunkInches };
    const text = [`${finding.problem}.`, finding.remedy] as const;
    return finding.severity === 'reject'
      ? anError({ ...at, code: 'TREE-TRUNK-IMPOSSIBLE' }, text)
      : aWarning({ ...at, code: 'TREE-TRUNK-UNUSUAL' }, text);
  });
  const feet = Math.min(...boundary.flat().map((corner) => distanceFt(corner, tree.position)));
  if (feet <= FARTHEST_FEET) return size;
  const at = { ...place, code: 'TREE-NOT-AT-SITE', field: field('position'), value: tree.position };
  return [
    ...size,
    anError(at, [
      'The tree stands far from its site.',
      'Give longitude before latitude, and check the digits.',
    ]),
  ];
}

function shareProblems(places: CampusPlaces, site: Site): Problem[] {
  const measured = measuredRootShare(places, site);
  const stated = site.facts.rootProtectedShare;
  if (measured === undefined || !stated.known) return [];
  if (Math.abs(measured - stated.value) <= SHARE_TOLERANCE) return [];
  const field = 'facts.rootProtectedShare';
  const place = { code: 'SITE-ROOT-SHARE-MISMATCH', record: `site ${site.id}`, field };
  return [
    aWarning({ ...place, value: stated.value }, [
      `The stated share in root protection is ${percent(stated.value)}, but the trees give ${percent(measured)}; planning uses that of the trees.`,
      'Correct the share, or the positions and trunks of the trees.',
    ]),
  ];
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}
