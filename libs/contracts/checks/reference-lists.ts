import { toFiscalYear } from '../conversion/values.js';
import type { FileView } from './file-view.js';
import type { Reference } from './reference.js';

interface SiteReferences {
  /** May be candidate or existing. */
  readonly any: readonly Reference[];
  /** Must still be to build. */
  readonly candidates: readonly Reference[];
}

export function siteReferences(view: FileView): SiteReferences {
  return {
    any: [
      ...view.funds.flatMap((fund) =>
        each(`fund ${fund.id}`, 'restriction.sites', listed(fund.restriction.sites)),
      ),
      ...view.construction.flatMap((works) => each(`works ${works.id}`, 'sites', works.sites)),
      ...publishedSites(view, 'built'),
    ],
    candidates: [
      ...view.precedence.flatMap(({ before, after }) => {
        const record = `precedence ${before} before ${after}`;
        return [...each(record, 'before', [before]), ...each(record, 'after', [after])];
      }),
      ...view.exclusiveGroups.flatMap((group) =>
        each(`exclusive group ${group.id}`, 'sites', group.sites),
      ),
      ...view.commitments.flatMap(({ id, test }) =>
        test.kind === 'named-site' ? each(`commitment ${id}`, 'test.site', [test.site]) : [],
      ),
      ...view.handPlacements.flatMap(({ site }) => each(`hand placement ${site}`, 'site', [site])),
      ...publishedSites(view, 'to build'),
    ],
  };
}

/** Sites that were published for years before the plan are built by now; the others are not. */
function publishedSites(view: FileView, which: 'built' | 'to build'): Reference[] {
  const first = view.time?.firstYear ?? 0;
  return (view.published?.placements ?? [])
    .filter(({ year }) => toFiscalYear(year) < first === (which === 'built'))
    .flatMap(({ site }) => each('published plan', `placements[${site}].site`, [site]));
}

export function buildTypeReferences(view: FileView): readonly Reference[] {
  return [
    ...view.candidateSites.flatMap((site) =>
      each(`site ${site.id}`, 'buildTypes', site.buildTypes),
    ),
    ...view.existingSites.flatMap((site) => each(`site ${site.id}`, 'buildType', [site.buildType])),
    ...[...view.candidateSites, ...view.existingSites].flatMap((site) =>
      site.gates.flatMap(({ kind, bars }) =>
        each(`site ${site.id}`, `gates[${kind}].bars`, typeof bars === 'string' ? [] : bars),
      ),
    ),
    ...view.funds.flatMap((fund) =>
      each(`fund ${fund.id}`, 'restriction.buildTypes', listed(fund.restriction.buildTypes)),
    ),
    ...view.commitments.flatMap(({ id, test }) =>
      'buildTypes' in test
        ? each(`commitment ${id}`, 'test.buildTypes', listed(test.buildTypes))
        : [],
    ),
    ...view.laterChanges.flatMap(({ id, from, buildType }) => [
      ...each(`later change ${id}`, 'from', listed(from)),
      ...each(`later change ${id}`, 'buildType', buildType === undefined ? [] : [buildType]),
    ]),
    ...(view.published?.placements ?? []).flatMap(({ site, buildType }) =>
      each('published plan', `placements[${site}].buildType`, [buildType]),
    ),
    ...view.handPlacements.flatMap(({ site, buildType }) =>
      buildType === undefined ? [] : each(`hand placement ${site}`, 'buildType', [buildType]),
    ),
  ];
}

export function frontingFunds({ funds }: FileView): readonly Reference[] {
  return funds.flatMap(({ id, reimbursement }) =>
    each(`fund ${id}`, 'reimbursement.frontedBy', reimbursement ? [reimbursement.frontedBy] : []),
  );
}

function listed(ids: 'any' | readonly string[]): readonly string[] {
  return ids === 'any' ? [] : ids;
}

function each(record: string, field: string, ids: readonly string[]): Reference[] {
  return ids.map((to) => ({ record, field, to }));
}
