import { anError, type Problem } from '#domain/problem.js';
import { careShareId } from '../conversion/funds.js';
import type { FileView } from './file-view.js';

interface Named {
  readonly record: string;
  readonly id: string;
}

/** Ids that mean two things: within a kind, or within kinds that share their references. */
export function duplicateIdProblems(view: FileView): Problem[] {
  const family = (noun: string, records: readonly { id: string }[]): Named[] =>
    records.map(({ id }) => ({ record: `${noun} ${id}`, id }));
  const families = [
    family('zone', view.zones),
    family('site', view.candidateSites),
    family('site', view.existingSites),
    family('build type', view.buildTypes),
    [
      ...family('pool', view.pools),
      ...family('work day', view.workDays),
      ...family('position', view.positions),
    ],
    [...family('fund', view.funds), ...careShares(view)],
    family('standing cost', view.standingCosts),
    family('works', view.construction),
    family('exclusive group', view.exclusiveGroups),
    family('commitment', view.commitments),
    family('later change', view.laterChanges),
    (view.calendar?.seasons ?? []).map(({ id }) => ({ record: 'calendar', id })),
    (view.benefit?.criteria ?? []).map(({ id }) => ({ record: `benefit criterion ${id}`, id })),
  ];
  return [...families.flatMap(repeated), ...twoRoles(view)];
}

/** The pot that keeps the care share of a fund gets an id of its own. */
function careShares(view: FileView): Named[] {
  return view.funds
    .filter((fund) => fund.careSharePercent > 0)
    .map((fund) => ({ record: `fund ${fund.id}`, id: careShareId(fund.id) }));
}

function repeated(family: readonly Named[]): Problem[] {
  const seen = new Set<string>();
  const reported = new Set<string>();
  const problems: Problem[] = [];
  for (const { record, id } of family) {
    if (seen.has(id) && !reported.has(id)) {
      reported.add(id);
      problems.push(
        anError({ code: 'ID-TWICE', record, field: 'id', value: id }, [
          `The id ${id} is given to more than one record, so nobody can tell which one is meant.`,
          'Give each record an id of its own.',
        ]),
      );
    }
    seen.add(id);
  }
  return problems;
}

function twoRoles(view: FileView): Problem[] {
  const existing = new Set(view.existingSites.map(({ id }) => id));
  const both = new Set(view.candidateSites.map(({ id }) => id).filter((id) => existing.has(id)));
  return [...both].map((id) =>
    anError({ code: 'SITE-IN-TWO-ROLES', record: `site ${id}`, field: 'id', value: id }, [
      'The site is given both as a candidate and as planted already.',
      'Keep it in existingSites if it is planted, else in candidateSites.',
    ]),
  );
}
