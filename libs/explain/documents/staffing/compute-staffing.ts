import { plannedSeasons, seasonMonths, type SeasonInstance } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { laborNeeds } from '#estimating/plan-needs/labor-needs.js';
import { laborSources, type LaborSource } from '#estimating/season-supply/sources.js';
import { centiHours, centiToHours } from '#units/centihours.js';
import { monthInWords } from '#units/dates-in-words.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import type { Ground } from '../../overview/ground.js';
import {
  undoneHours,
  usableBySource,
  type SeasonNeeds,
} from '../../overview/labor/usable-hours.js';
import type { SeasonRow } from '../../overview/plan-overview.js';
import { evenShares, termShares } from './month-shares.js';
import type {
  StaffingMonth,
  StaffingPeople,
  StaffingRequest,
  StaffingSeason,
} from './staffing-request.js';

/** One season of the year shown, with what it wants and who is there without what is proposed. */
interface Staffed {
  readonly instance: SeasonInstance;
  readonly label: string;
  readonly needs: SeasonNeeds;
  readonly sources: readonly LaborSource[];
  readonly usable: ReadonlyMap<string, number>;
}

/** What a superintendent asks of a plan. `rows`: the seasons of the same plan's overview. */
export function staffingRequest(ground: Ground, rows: readonly SeasonRow[]): StaffingRequest {
  const within = rows.filter(({ afterHorizon }) => !afterHorizon);
  const first = within.find(({ shortNow }) => shortNow > 0);
  const year = (first ?? within.at(-1))?.year ?? '';
  const seasons = seasonsOf(ground, rows, year);
  const worst = within.reduce<SeasonRow | undefined>(
    (most, row) => (row.shortNow > (most?.shortNow ?? 0) ? row : most),
    undefined,
  );
  return {
    year,
    short: first !== undefined,
    months: seasons.flatMap((season) => monthsOf(ground.campus, season)),
    seasons: seasons.map((season) => seasonOf(ground.campus, season)),
    people: peopleOf(seasons),
    worst: worst ? { label: worst.label, hours: worst.shortNow } : null,
  };
}

function seasonsOf(ground: Ground, rows: readonly SeasonRow[], year: string): Staffed[] {
  const { campus, plan, charges } = ground;
  const needs = laborNeeds(campus, plan.decisions, charges);
  const withoutHires = { ...plan.decisions, hires: [] };
  return plannedSeasons(campus.calendar)
    .filter((instance) => fiscalYearLabel(instance.year) === year)
    .flatMap((instance) => {
      const wanted = needs[instance.index];
      if (!wanted) return [];
      const sources = laborSources(campus, withoutHires, instance);
      const label = rows[instance.index]?.label ?? instance.season.id;
      const usable = usableBySource(instance, wanted, sources);
      return [{ instance, label, needs: wanted, sources, usable }];
    });
}

function monthsOf(campus: Campus, { instance, needs, usable }: Staffed): StaffingMonth[] {
  const { season } = instance;
  const even = evenShares(season);
  const inTerm = termShares(campus.calendar, season);
  const withTerm = new Set([
    ...campus.pools.filter(({ kind }) => goesWithTerm(kind)).map(({ id }) => id),
    ...campus.workDays.map(({ id }) => id),
  ]);
  const hours = (amount: number) => centiToHours(centiHours(amount));
  return seasonMonths(campus.calendar, instance).map(({ month, calendarYear }, place) => {
    const share = even[place] ?? 0;
    const people = [...usable].reduce(
      (sum, [source, given]) => sum + given * (withTerm.has(source) ? (inTerm[place] ?? 0) : share),
      0,
    );
    return {
      label: monthInWords(`${calendarYear}-${String(month).padStart(2, '0')}-01`),
      careFood: hours(needs['care-food'] + needs.harvest) * share,
      careOther: hours(needs['care-other']) * share,
      build: hours(needs.prepare + needs.plant) * share,
      lead: hours(needs.supervise) * share,
      people,
    };
  });
}

function goesWithTerm(kind: Campus['pools'][number]['kind']): boolean {
  return kind === 'student' || kind === 'course';
}

function seasonOf(
  campus: Campus,
  { instance, label, needs, sources, usable }: Staffed,
): StaffingSeason {
  const students = new Set(
    campus.pools.filter(({ kind }) => goesWithTerm(kind)).map(({ id }) => id),
  );
  const others = sources.filter(({ id }) => !students.has(id));
  const wanted = Object.values(needs).reduce((sum, one) => sum + one, 0);
  return {
    season: instance.season.id,
    label,
    wanted: centiToHours(centiHours(wanted)),
    people: [...usable.values()].reduce((sum, one) => sum + one, 0),
    short: undoneHours(instance, needs, sources),
    shortWithoutStudents: undoneHours(instance, needs, others),
  };
}

function peopleOf(seasons: readonly Staffed[]): StaffingPeople[] {
  const names = new Map(seasons.flatMap(({ sources }) => sources.map((s) => [s.id, s.name])));
  return [...names].map(([id, name]) => ({
    name,
    bySeason: seasons.map(({ usable }) => usable.get(id) ?? 0),
  }));
}
