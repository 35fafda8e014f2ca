import { plannedYears, yearAt } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { anError, type Problem } from '#domain/problem.js';
import { counted } from '#units/in-words.js';
import { toFiscalYear } from '../conversion/values.js';
import type { PlanPart } from '../plan-file.schema.js';

type Row = Readonly<Record<string, string | number>>;

/** Rows of a plan that name what the campus does not have, or that cannot be counted exactly. */
export function planPartProblems(plan: PlanPart, campus: Campus): Problem[] {
  const judge = rowJudge(campus);
  const { placements, compost, spending, ...lists } = plan;
  return [
    ...placements.flatMap((placement) => placementProblems(placement, judge)),
    ...Object.entries(lists).flatMap(([list, rows]) =>
      (rows as readonly Row[]).flatMap((row) => judge(`${list} ${rowName(row)}`, row)),
    ),
    ...spending.flatMap((row) => spendingProblems(row, judge)),
    ...compost.flatMap((row) => compostProblems(row, judge)),
  ];
}

/** The award that pays an entry back is one of the campus as well. */
function spendingProblems(
  { repaidBy, site, ...rest }: PlanPart['spending'][number],
  judge: (record: string, row: Row) => Problem[],
): Problem[] {
  const row = { ...rest, ...(site === undefined ? {} : { site }) };
  const record = `spending ${rowName(row)}`;
  const award = repaidBy && judge(`${record} repaidBy`, { year: row.year, ...repaidBy });
  return [...judge(record, row), ...(award ?? [])];
}

/** The certified part of a row is counted as exactly as the whole. */
function compostProblems(
  { certified, ...row }: PlanPart['compost'][number],
  judge: (record: string, row: Row) => Problem[],
): Problem[] {
  const record = `compost ${rowName(row)}`;
  const part = certified && judge(`${record} certified`, { year: row.year, ...certified });
  return [...judge(record, row), ...(part ?? [])];
}

/** A second half lies in a planned year as well, and a change is one of the campus. */
function placementProblems(
  { secondHalf, change, ...row }: PlanPart['placements'][number],
  judge: (record: string, row: Row) => Problem[],
): Problem[] {
  const record = `placements ${rowName(row)}`;
  return [
    ...judge(record, { ...row, ...(change ? { change: change.id } : {}) }),
    ...(secondHalf === undefined ? [] : judge(`${record} secondHalf`, { year: secondHalf })),
  ];
}

/** `labor FY2030 summer gardener care-food`: what tells the row from others. */
function rowName(row: Row): string {
  const naming = ['year', 'season', 'site', 'position', 'workDay', 'source', 'fund', 'line'];
  const words = [...naming, 'taskClass'].flatMap((key) => row[key] ?? []);
  return words.join(' ');
}

function rowJudge(campus: Campus): (record: string, row: Row) => Problem[] {
  const known = knownIds(campus);
  const last = yearAt(campus.calendar, plannedYears(campus.calendar) - 1);
  return (record, row) => [
    ...Object.entries(known).flatMap(([field, ids]) => unknownId(record, { row, field, ids })),
    ...yearProblems(record, row, [campus.calendar.firstYear, last]),
    ...inflowProblems(record, row, campus),
    ...EXACT_FIELDS.flatMap((field) => finenessProblems(record, row, field)),
  ];
}

function knownIds(campus: Campus): Readonly<Record<string, ReadonlySet<string>>> {
  const ids = (records: readonly { id: string }[]): string[] => records.map(({ id }) => id);
  return {
    season: new Set(ids(campus.calendar.seasons)),
    site: new Set([...ids(campus.candidates), ...ids(campus.existing)]),
    buildType: new Set(ids(campus.buildTypes)),
    position: new Set(ids(campus.positions)),
    workDay: new Set(ids(campus.workDays)),
    source: new Set([...ids(campus.pools), ...ids(campus.workDays), ...ids(campus.positions)]),
    fund: new Set(ids(campus.funds)),
    change: new Set(ids(campus.laterChanges ?? [])),
  };
}

/** Fields as a reader would say them. */
const NOUNS: Readonly<Record<string, string>> = {
  buildType: 'build type',
  workDay: 'work day',
  source: 'pool, work day or position',
  change: 'later change',
};

interface Named {
  readonly row: Row;
  readonly field: string;
  readonly ids: ReadonlySet<string>;
}

function unknownId(record: string, { row, field, ids }: Named): Problem[] {
  const value = row[field];
  if (typeof value !== 'string' || ids.has(value)) return [];
  return [
    anError({ code: 'PLAN-REFERENCE-MISSING', record, field, value }, [
      `The campus has no ${NOUNS[field] ?? field} called ${value}.`,
      'Give the plan beside the campus file that it was made from.',
    ]),
  ];
}

function yearProblems(
  record: string,
  row: Row,
  [first, last]: readonly [number, number],
): Problem[] {
  const year = toFiscalYear(String(row.year));
  if (year >= first && year <= last) return [];
  return [
    anError({ code: 'PLAN-YEAR-OUTSIDE', record, field: 'year', value: row.year }, [
      `The year lies outside what is planned, FY${first} to FY${last}.`,
      'Give the plan beside the campus file that it was made from.',
    ]),
  ];
}

function inflowProblems(record: string, row: Row, campus: Campus): Problem[] {
  const fund = campus.funds.find(({ id }) => id === row.fund);
  if (!fund || fund.inflows[Number(row.inflow)] !== undefined) return [];
  return [
    anError({ code: 'PLAN-REFERENCE-MISSING', record, field: 'inflow', value: row.inflow }, [
      `The fund ${fund.id} has ${counted(fund.inflows.length, 'inflow')}, numbered from 0: none of them is number ${row.inflow}.`,
      'Give the plan beside the campus file that it was made from.',
    ]),
  ];
}

const EXACT_FIELDS = ['hours', 'dollars', 'givenAwayCubicYards', 'stockCubicYards'] as const;

/**
 * Plans are made and checked in whole cents and hundredths: nothing finer is rounded in silence. The
 * comparison is exact, since n / 100 is the double nearest to a text of two decimals.
 */
function finenessProblems(record: string, row: Row, field: string): Problem[] {
  const value = row[field];
  if (typeof value !== 'number') return [];
  if (Math.round(value * 100) / 100 === value) return [];
  return [
    anError({ code: 'PLAN-TOO-FINE', record, field, value }, [
      `${value} has more than two decimals.`,
      'Give two decimals: plans are counted in whole cents and hundredths.',
    ]),
  ];
}
