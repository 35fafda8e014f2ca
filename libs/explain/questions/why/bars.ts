import { candidate, type Campus } from '#domain/campus.js';
import { lifeOf } from '#estimating/site-charges/life.js';
import { freeOfWorks } from '#rules/construction/columns.js';
import { fiscalYearLabel, type FiscalYear } from '#units/fiscal-year.js';

/** Why a site may not be prepared in a year (`null`: in any), each rule in one sentence. */
export function barsTo(campus: Campus, id: string, year: FiscalYear | null): string[] {
  const site = candidate(campus, id);
  const early = site.earliest !== undefined && year !== null && year < site.earliest;
  const late = site.latest !== undefined && year !== null && year > site.latest;
  const gates = site.gates
    .filter(
      (g) => g.status === 'fail' || (g.status === 'unknown' && stillOpen(g.plannedClearFrom, year)),
    )
    .map((g) => `${g.note} Cleared by: ${g.clearedBy.replace(/\.$/, '')}.`);
  const works = year !== null && !freeOfWorks(campus, id, lifeOf(campus, id, year));
  const found = [
    ...(early ? [`It is open from ${label(site.earliest)} on.`] : []),
    ...(late ? [`It is open until ${label(site.latest)}.`] : []),
    ...gates,
    ...(works
      ? campus.construction
          .filter((w) => w.sites.includes(id))
          .map(
            (w) =>
              `${w.name}, ${label(w.from)} to ${label(w.to)}, ${w.certaintyPercent}% certain, takes the ground.`,
          )
      : []),
  ];
  return found.length > 0
    ? found
    : ['The year lies outside the plan, or no build type is open to it.'];
}

function stillOpen(from: FiscalYear | undefined, year: FiscalYear | null): boolean {
  return from === undefined || (year !== null && year < from);
}

function label(year: FiscalYear | undefined): string {
  return year === undefined ? '' : fiscalYearLabel(year);
}
