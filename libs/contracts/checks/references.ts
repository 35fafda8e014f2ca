import { anError, type Problem } from '#domain/problem.js';
import { nearest } from '../reading/nearest.js';
import { changeReferences, publishedPositions } from './lives.js';
import { buildTypeReferences, frontingFunds, siteReferences } from './reference-lists.js';
import type { Reference } from './reference.js';
import { seasonReferences } from './season-references.js';
import { allSites, type FileView } from './file-view.js';

/** References to zones, sites, build types and seasons that the file does not have. */
export function referenceProblems(view: FileView): Problem[] {
  const { ids } = view;
  const zones = allSites(view).map(({ id, zone }) => ({
    record: `site ${id}`,
    field: 'zone',
    to: zone,
  }));
  return [
    ...missing('zone', ids.zones, zones),
    ...missing('site', ids.sites, siteReferences(view).any),
    ...missing('site', ids.sites, siteReferences(view).candidates),
    ...notCandidates(view, siteReferences(view).candidates),
    ...missing('build type', ids.buildTypes, buildTypeReferences(view)),
    ...missing('later change', ids.laterChanges, changeReferences(view)),
    ...missing('fund', ids.funds, frontingFunds(view)),
    ...missing('position', ids.positions, publishedPositions(view)),
    ...(ids.seasons ? missing('season', ids.seasons, seasonReferences(view)) : []),
  ];
}

function missing(
  noun: string,
  given: ReadonlySet<string>,
  references: readonly Reference[],
): Problem[] {
  return references
    .filter(({ to }) => !given.has(to))
    .map(({ record, field, to }) => {
      const meant = nearest(to, [...given]);
      return anError({ code: 'REFERENCE-MISSING', record, field, value: to }, [
        `There is no ${noun} called ${to} in this file.`,
        meant ? `Did you mean ${meant}?` : `Add the ${noun}, or name one that is there.`,
      ]);
    });
}

function notCandidates(view: FileView, references: readonly Reference[]): Problem[] {
  return references
    .filter(({ to }) => view.ids.existing.has(to) && !view.ids.candidates.has(to))
    .map(({ record, field, to }) =>
      anError({ code: 'SITE-ALREADY-BUILT', record, field, value: to }, [
        `${to} is an existing site, and only a candidate can be built.`,
        'Name a candidate site.',
      ]),
    );
}
