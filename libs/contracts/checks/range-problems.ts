import { anError, aWarning, type Problem } from '#domain/problem.js';
import { valueAt, isRecord } from '../reading/record-names.js';
import { allSites, type FileView } from './file-view.js';
import {
  BENEFIT_RANGES,
  BUILD_TYPE_RANGES,
  CARE_RANGES,
  COMPOST_RANGES,
  ESCALATION_RANGES,
  FUND_RANGES,
  POSITION_RANGES,
  SITE_RANGES,
  WORK_DAY_RANGES,
  type Range,
} from './ranges.js';

/** Numbers that are unusual, or that the unit of the field makes impossible. */
export function rangeProblems(view: FileView): Problem[] {
  const each = (noun: string, records: readonly { id: string }[], ranges: readonly Range[]) =>
    records.flatMap((record) => judged(`${noun} ${record.id}`, record, ranges));
  const care = Object.entries(view.care ?? {});
  return [
    ...each('site', allSites(view), SITE_RANGES),
    ...each('build type', view.buildTypes, BUILD_TYPE_RANGES),
    ...care.flatMap(([component, row]) => judged(`care ${component}`, row, CARE_RANGES)),
    ...each('work day', view.workDays, WORK_DAY_RANGES),
    ...each('position', view.positions, POSITION_RANGES),
    ...each('fund', view.funds, FUND_RANGES),
    ...judged('compost', view.compost, COMPOST_RANGES),
    ...judged('escalation', view.escalationPercent, ESCALATION_RANGES),
    ...judged('benefit', view.benefit, BENEFIT_RANGES),
  ];
}

function judged(name: string, record: unknown, ranges: readonly Range[]): Problem[] {
  if (!isRecord(record)) return [];
  return ranges.flatMap((range) =>
    spread(record, range.path).flatMap((path) => judge(name, { record, path, range })),
  );
}

/** `compostInches.*` for each key that is there. */
function spread(record: Record<string, unknown>, path: readonly string[]): string[][] {
  const star = path.indexOf('*');
  if (star < 0) return [[...path]];
  const holder = valueAt(record, path.slice(0, star));
  if (!isRecord(holder)) return [];
  return Object.keys(holder).map((key) => path.map((step) => (step === '*' ? key : step)));
}

interface Judged {
  readonly record: Record<string, unknown>;
  readonly path: readonly string[];
  readonly range: Range;
}

/** Values that the schema has refused already are not refused a second time. */
function judge(name: string, { record, path, range }: Judged): Problem[] {
  const value = valueAt(record, path);
  if (typeof value !== 'number' || (value === 0 && range.noneIsFine)) return [];
  const place = { code: range.code, record: name, field: path.join('.'), value };
  const { possible, plausible, unit, remedy } = range;
  if (possible && outside(value, possible)) {
    return [anError(place, [`${value} cannot be right for a value in ${unit}.`, remedy])];
  }
  if (!outside(value, plausible)) return [];
  const usual = `${plausible[0]} to ${plausible[1]}`;
  return [aWarning(place, [`${value} is unusual: ${usual} is expected.`, remedy])];
}

function outside(value: number, [low, high]: readonly [number, number]): boolean {
  return value < low || value > high;
}
