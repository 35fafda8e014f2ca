import type { Calendar } from '#domain/calendar.js';
import { toFiscalYear, toOptionalYear } from '../conversion/values.js';
import { buildYears, type CandidatePart, type FileView } from './file-view.js';

type GatePart = CandidatePart['gates'][number];

/** Fiscal years, as numbers, in which a site may be prepared as at least one of the types. */
export function openYears(
  view: FileView,
  site: CandidatePart,
  types: readonly string[] = site.buildTypes,
): number[] {
  if (!view.time) return [];
  return windowYears(view.time, site).filter(
    (year) =>
      !isTakenByWorks(view, site.id, year) &&
      types.some((type) => !site.gates.some((gate) => closes(view, gate, { type, year }))),
  );
}

/**
 * Years between the first and last that the site itself allows, within the horizon. Where the two are
 * inverted, which is said elsewhere, they say nothing.
 */
export function windowYears(time: Calendar, site: CandidatePart): number[] {
  const [first, last] = buildYears(time);
  const [earliest, latest] = [toOptionalYear(site.earliest), toOptionalYear(site.latest)];
  const inverted = (latest ?? Infinity) < (earliest ?? -Infinity);
  const from = inverted ? first : Math.max(first, earliest ?? first);
  const to = inverted ? last : Math.min(last, latest ?? last);
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => from + i);
}

/** Works that are certain enough bar building outright while they last. */
export function isTakenByWorks(view: FileView, site: string, year: number): boolean {
  return view.construction.some(
    ({ sites, from, to, certaintyPercent }) =>
      sites.includes(site) &&
      certaintyPercent >= view.hardAtCertaintyPercent &&
      year >= toFiscalYear(from) &&
      year <= toFiscalYear(to),
  );
}

/** A failed gate closes for good; an unknown one until the campus plans on a pass. */
function closes(
  view: FileView,
  gate: GatePart,
  { type, year }: { type: string; year: number },
): boolean {
  if (gate.status === 'pass' || !bars(view, gate, type)) return false;
  const clearFrom = gate.status === 'unknown' ? toOptionalYear(gate.plannedClearFrom) : undefined;
  return year < (clearFrom ?? Infinity);
}

function bars(view: FileView, { bars: barred }: GatePart, type: string): boolean {
  if (barred === 'all') return true;
  if (barred !== 'edible') return barred.includes(type);
  return view.buildTypes.find(({ id }) => id === type)?.edible ?? false;
}

/** True where failed gates alone close every one of the types, in every year. */
export function failsItsGates(
  view: FileView,
  site: CandidatePart,
  types: readonly string[] = site.buildTypes,
): boolean {
  const failed = site.gates.filter(({ status }) => status === 'fail');
  return types.every((type) => failed.some((gate) => bars(view, gate, type)));
}
