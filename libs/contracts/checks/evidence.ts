import { anError, aWarning, type Problem } from '#domain/problem.js';
import { allSites, type FileView, type SitePart } from './file-view.js';

/** Soil tests older than this many years are asked for again: common practice. */
const SOIL_TEST_YEARS = 3;

/** Observations from the future, out of date, or with dates that run backward. */
export function evidenceProblems(view: FileView): Problem[] {
  return allSites(view).flatMap((site) =>
    site.evidence.flatMap((entry) => {
      const place = { record: `site ${site.id}`, field: `evidence[${entry.fact}].date` };
      return [...futureProblems(view, entry, place), ...ageProblems(view, entry, place)];
    }),
  );
}

type Entry = SitePart['evidence'][number];
interface Place {
  readonly record: string;
  readonly field: string;
}

function futureProblems({ dataDate }: FileView, { date, expires }: Entry, at: Place): Problem[] {
  const problems: Problem[] = [];
  if (dataDate !== undefined && date > dataDate) {
    problems.push(
      anError({ ...at, code: 'EVIDENCE-FROM-FUTURE', value: date }, [
        `The observation is dated ${date}, after the day the data was confirmed, ${dataDate}.`,
        'Correct the date, or confirm the data anew and set dataDate.',
      ]),
    );
  }
  if (expires !== undefined && expires < date) {
    problems.push(
      anError({ ...at, code: 'EVIDENCE-DATES-INVERTED', value: expires }, [
        `The observation expires on ${expires}, before it was made on ${date}.`,
        'Swap or correct the dates.',
      ]),
    );
  }
  return problems;
}

function ageProblems({ calendar }: FileView, entry: Entry, at: Place): Problem[] {
  if (!calendar) return [];
  const today = calendar.planningDate;
  const isSoilTest = /lead|soil|ph\b/i.test(entry.fact);
  const old = isSoilTest && addYears(entry.date, SOIL_TEST_YEARS) < today;
  const expired = entry.expires !== undefined && entry.expires < today;
  if (!old && !expired) return [];
  const said = expired
    ? `expired on ${entry.expires}`
    : `is more than ${SOIL_TEST_YEARS} years old`;
  return [
    aWarning({ ...at, code: 'EVIDENCE-OUT-OF-DATE', value: entry.date }, [
      `The observation ${said}.`,
      'Observe it again, or treat the fact as unknown.',
    ]),
  ];
}

function addYears(date: string, years: number): string {
  return `${Number(date.slice(0, 4)) + years}${date.slice(4)}`;
}
