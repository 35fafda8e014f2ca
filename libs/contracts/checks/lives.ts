import { anError, type Problem } from '#domain/problem.js';
import { toFiscalYear } from '../conversion/values.js';
import type { FileView } from './file-view.js';
import type { Reference } from './reference.js';

/** References of later changes and of the published plan, by what they refer to. */
export function changeReferences(view: FileView): Reference[] {
  return [
    ...view.candidateSites.flatMap(({ id, laterChanges = [] }) =>
      laterChanges.map((to) => ({ record: `site ${id}`, field: 'laterChanges', to })),
    ),
    ...(view.published?.placements ?? []).flatMap(({ site, change }) =>
      change
        ? [{ record: `published plan`, field: `placements[${site}].change`, to: change.id }]
        : [],
    ),
  ];
}

export function publishedPositions({ published }: FileView): Reference[] {
  return (published?.hires ?? []).map(({ position: to, year }) => ({
    record: 'published plan',
    field: `hires[${year}].position`,
    to,
  }));
}

/** A published plan that contradicts itself. */
export function publishedProblems({ published }: FileView): Problem[] {
  const seen = new Set<string>();
  return (published?.placements ?? []).flatMap(({ site, year, secondHalf }) => {
    const place = { record: 'published plan', field: `placements[${site}]` };
    const twice = seen.has(site);
    seen.add(site);
    if (twice) {
      return [
        anError({ ...place, code: 'PUBLISHED-SITE-TWICE', value: site }, [
          `${site} stands twice in the published plan.`,
          'Keep the placement that was published.',
        ]),
      ];
    }
    if (secondHalf === undefined || toFiscalYear(secondHalf) > toFiscalYear(year)) return [];
    return [
      anError({ ...place, code: 'PUBLISHED-HALVES-ORDER', value: secondHalf }, [
        `The second half of ${site} is not after its first.`,
        'Give a later fiscal year for the second half.',
      ]),
    ];
  });
}
