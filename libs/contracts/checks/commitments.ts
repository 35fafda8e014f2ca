import { anError, aWarning, type Problem, type ProblemText } from '#domain/problem.js';
import { toFiscalYear } from '../conversion/values.js';
import { buildYears, type CommitmentPart, type FileView } from './file-view.js';
import { openYears } from './open-years.js';

/** Promises that no one could keep or test as they are written. */
export function commitmentProblems(view: FileView): Problem[] {
  return view.commitments.flatMap((commitment) => [
    ...documentProblems(commitment),
    ...dateProblems(view, commitment),
    ...pointProblems(commitment),
    ...yearProblems(view, commitment),
    ...emptyTestProblems(commitment),
    ...namedSiteProblems(view, commitment),
  ]);
}

function documentProblems({ id, strength, document }: CommitmentPart): Problem[] {
  const written = document.trim();
  if (strength !== 'binding' || (written !== '' && written.toLowerCase() !== 'unknown')) return [];
  return [
    commitmentError(id, { code: 'COMMIT-BINDING-WITHOUT-DOCUMENT', field: 'document' }, [
      'It is called binding, and no document says so.',
      'Name the document, or call it intended.',
    ]),
  ];
}

function dateProblems({ dataDate }: FileView, { id, date }: CommitmentPart): Problem[] {
  if (dataDate === undefined || date <= dataDate) return [];
  return [
    commitmentError(id, { code: 'COMMIT-FROM-FUTURE', field: 'date', value: date }, [
      `It is dated ${date}, after the day the data was confirmed, ${dataDate}.`,
      'Correct the date, or confirm the data anew and set dataDate.',
    ]),
  ];
}

function pointProblems({ id, strength, points = 0 }: CommitmentPart): Problem[] {
  const place = { code: 'COMMIT-POINTS', field: 'points', value: points };
  if (strength === 'aspiration' && points === 0) {
    return [
      aWarning({ record: `commitment ${id}`, ...place }, [
        'It is an aspiration without points, so the plan has no reason to keep it.',
        'Give it points, or call it intended.',
      ]),
    ];
  }
  if (strength === 'aspiration' || points === 0) return [];
  return [
    commitmentError(id, place, [
      `It is ${strength} and also earns points, which only an aspiration does.`,
      'Leave the points out, or call it an aspiration.',
    ]),
  ];
}

function yearProblems({ time }: FileView, { id, test }: CommitmentPart): Problem[] {
  if (test.kind === 'sites-each-year' && toFiscalYear(test.to) < toFiscalYear(test.from)) {
    return [
      commitmentError(id, { code: 'COMMIT-YEARS-INVERTED', field: 'test.to', value: test.to }, [
        `It ends in ${test.to}, before it begins in ${test.from}.`,
        'Swap or correct the years.',
      ]),
    ];
  }
  const due = dueYear(test);
  if (!time || due === undefined) return [];
  const [first, last] = buildYears(time);
  const value = `FY${due.year}`;
  if (due.year < first) {
    return [
      commitmentError(id, { code: 'COMMIT-BEFORE-PLAN', field: due.field, value }, [
        `It is due in ${value}, before the plan begins in FY${first}.`,
        'Correct the year, or remove what is past.',
      ]),
    ];
  }
  if (due.year <= last) return [];
  return [
    aWarning(
      { code: 'COMMIT-BEYOND-HORIZON', record: `commitment ${id}`, field: due.field, value },
      [
        `It reaches to ${value}, but the plan ends with FY${last}.`,
        'Only the years within the plan are planned for.',
      ],
    ),
  ];
}

function dueYear(test: CommitmentPart['test']): { field: string; year: number } | undefined {
  if (test.kind === 'sites-each-year') return { field: 'test.to', year: toFiscalYear(test.to) };
  if (test.kind === 'named-site' || test.kind === 'area') {
    return { field: 'test.by', year: toFiscalYear(test.by) };
  }
  return undefined;
}

/** A test that everything passes is none. */
function emptyTestProblems({ id, test }: CommitmentPart): Problem[] {
  const empty =
    (test.kind === 'sites-each-year' && test.count === 0) ||
    (test.kind === 'zone-balance' && test.leastPerZone === 0);
  if (!empty) return [];
  const field = test.kind === 'zone-balance' ? 'test.leastPerZone' : 'test.count';
  return [
    commitmentError(id, { code: 'COMMIT-NOT-TESTABLE', field, value: 0 }, [
      'It asks for 0, which is kept whatever happens.',
      'Say how many were promised, or remove it.',
    ]),
  ];
}

function namedSiteProblems(view: FileView, { id, test }: CommitmentPart): Problem[] {
  if (test.kind !== 'named-site') return [];
  const site = view.candidateSites.find((s) => s.id === test.site);
  if (!site) return [];
  const { buildTypes } = test;
  const types = site.buildTypes.filter((t) => buildTypes === 'any' || buildTypes.includes(t));
  if (types.length === 0) {
    return [
      commitmentError(id, { code: 'COMMIT-TYPE-NOT-ALLOWED', field: 'test.buildTypes' }, [
        `${site.id} may become none of the build types that were promised.`,
        'Allow one of them on the site, or correct the promise.',
      ]),
    ];
  }
  const due = toFiscalYear(test.by);
  if (!view.time || due < view.time.firstYear) return [];
  if (openYears(view, site, types).some((year) => year <= due)) return [];
  const place = { code: 'COMMIT-SITE-CLOSED', record: `commitment ${id}`, field: 'test.by' };
  return [
    aWarning({ ...place, value: test.by }, [
      `${site.id} cannot be prepared in any year up to ${test.by}: gates, works or its own years are in the way.`,
      'Find out what would clear them, or tell those who were promised it.',
    ]),
  ];
}

function commitmentError(
  id: string,
  place: { code: string; field: string; value?: unknown },
  text: ProblemText,
): Problem {
  return anError({ record: `commitment ${id}`, ...place }, text);
}
