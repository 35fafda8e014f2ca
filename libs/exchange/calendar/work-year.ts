import type { CampusFile } from '#contracts/campus-file.schema.js';
import { toCalendar } from '#contracts/conversion/calendar.js';
import { toFiscalYear } from '#contracts/conversion/values.js';
import type { PlanFile } from '#contracts/plan-file.js';
import {
  fiscalYearOf,
  plantIndex,
  seasonIndex,
  seasonInstance,
  seasonLabel,
  seasonOrder,
  seasonStart,
  yearIndexOf,
  type Calendar,
  type SeasonInstance,
} from '#domain/calendar.js';
import type { CompostGrade } from '#domain/compost.js';
import { askDate } from '#domain/position-dates.js';
import type { FiscalYear } from '#units/fiscal-year.js';
import { counted, hoursInWords, listInWords } from '#units/in-words.js';
import { ORDER_WEEKS, WORK_CAUTIONS } from './work-cautions.data.js';
import { addDays, type WorkEvent } from './work-event.js';

interface Work {
  readonly file: CampusFile;
  readonly plan: PlanFile['plan'];
  readonly calendar: Calendar;
  readonly year: FiscalYear;
}

/**
 * What a plan has people do in one fiscal year: prepare, order, plant, care, harvest, and ask for
 * positions. What falls before the plan begins is told with its first year. The plan knows seasons
 * and no days, so an event lasts as long as its season; orders and asks are on their last good day.
 */
export function workYear(
  { file, plan }: { readonly file: CampusFile; readonly plan: PlanFile },
  year: FiscalYear,
): WorkEvent[] {
  const work = { file, plan: plan.plan, calendar: toCalendar(file.calendar), year };
  const events = [
    ...siteEvents(work),
    ...careEvents(work),
    ...orderEvents(work),
    ...askEvents(work),
  ];
  return events.sort((a, b) => compare(a.starts, b.starts) || compare(a.key, b.key));
}

function compare(a: string, b: string): number {
  return a < b ? -1 : Number(a > b);
}

function lasting({ calendar }: Work, season: SeasonInstance) {
  return {
    starts: seasonStart(calendar, season),
    endsBefore: seasonStart(calendar, seasonInstance(calendar, season.index + 1)),
  };
}

/** Within the work year; the first one takes what lies before it too. */
function isIn({ calendar, year }: Work, other: FiscalYear): boolean {
  return other === year || (year === calendar.firstYear && other < year);
}

function siteEvents(work: Work): WorkEvent[] {
  const { calendar, file, plan, year } = work;
  const types = new Map(file.buildTypes.map(({ id, name }) => [id, name]));
  const sites = new Map(file.candidateSites.map(({ id, name }) => [id, name]));
  return plan.placements.flatMap(({ site, buildType, year: of }): WorkEvent[] => {
    const yearIndex = yearIndexOf(calendar, toFiscalYear(of));
    const order = seasonOrder(calendar, calendar.prepareSeason);
    const prepare = seasonInstance(calendar, seasonIndex(calendar, yearIndex, order));
    const plant = seasonInstance(calendar, plantIndex(calendar, yearIndex));
    const what = `${site} ${sites.get(site) ?? ''} as ${types.get(buildType) ?? buildType}`;
    const both = [
      { kind: 'prepare', verb: 'Prepare', season: prepare },
      { kind: 'plant', verb: 'Plant', season: plant },
    ] as const;
    return both
      .filter(({ season }) => season.year === year)
      .map(({ kind, verb, season }) => ({
        key: `${kind}-${site}`,
        kind,
        ...lasting(work, season),
        summary: `${verb} ${what}`,
        description: WORK_CAUTIONS[kind],
      }));
  });
}

function careEvents(work: Work): WorkEvent[] {
  const { calendar, year } = work;
  const yearIndex = yearIndexOf(calendar, year);
  return calendar.seasons.flatMap(({ id }, order): WorkEvent[] => {
    const season = seasonInstance(calendar, seasonIndex(calendar, yearIndex, order));
    const at = { key: `${id}-FY${year}`, when: lasting(work, season), season };
    return [
      ...seasonWork(work, { ...at, kind: 'care', classes: ['care-food', 'care-other'] }),
      ...seasonWork(work, { ...at, kind: 'harvest', classes: ['harvest'] }),
    ];
  });
}

interface SeasonWork {
  readonly key: string;
  readonly kind: 'care' | 'harvest';
  readonly classes: readonly string[];
  readonly season: SeasonInstance;
  readonly when: Pick<WorkEvent, 'starts' | 'endsBefore'>;
}

function seasonWork(work: Work, of: SeasonWork): WorkEvent[] {
  const { plan, calendar } = work;
  const isMeant = (row: { year: string; season: string; taskClass: string }): boolean =>
    toFiscalYear(row.year) === of.season.year &&
    row.season === of.season.season.id &&
    of.classes.includes(row.taskClass);
  const total = (rows: readonly { hours: number }[]): number =>
    rows.reduce((sum, { hours }) => sum + hours, 0);
  const given = total(plan.labor.filter(isMeant));
  const unserved = total(plan.unserved.filter(isMeant));
  if (given + unserved === 0) return [];
  const verb = of.kind === 'care' ? 'Care for planted sites' : 'Harvest';
  const short = unserved > 0 ? ` No one is there yet for ${hoursInWords(unserved)} more.` : '';
  const planned = `The plan has ${hoursInWords(given)} for it in ${seasonLabel(calendar, of.season)}.`;
  return [
    {
      key: `${of.kind}-${of.key}`,
      kind: of.kind,
      ...of.when,
      summary: `${verb}: ${hoursInWords(given)}`,
      description: `${planned}${short} ${WORK_CAUTIONS[of.kind]}`,
    },
  ];
}

/** Orders for each season that buys compost or prepares sites, some weeks before it opens. */
function orderEvents(work: Work): WorkEvent[] {
  const { calendar, plan, year } = work;
  const yearIndex = yearIndexOf(calendar, year);
  return calendar.seasons.flatMap(({ id }, order): WorkEvent[] => {
    const season = seasonInstance(calendar, seasonIndex(calendar, yearIndex, order));
    const bought = (wanted: CompostGrade) =>
      plan.compostPurchases
        .filter((row) => toFiscalYear(row.year) === year && row.season === id)
        .filter(({ grade = 'certified' }) => grade === wanted)
        .reduce((sum, { cubicYards }) => sum + cubicYards, 0);
    const [certified, other] = [bought('certified'), bought('other')];
    const sites = plan.placements
      .filter((row) => toFiscalYear(row.year) === year && id === calendar.prepareSeason)
      .map(({ site }) => site);
    const items = [
      ...(certified > 0 ? [`${counted(certified, 'cubic yard')} of compost`] : []),
      ...(other > 0
        ? [`${counted(other, 'cubic yard')} of compost that goes on no food ground`]
        : []),
      ...(sites.length > 0 ? [`cardboard and wood chips for ${listInWords(sites)}`] : []),
    ];
    if (items.length === 0) return [];
    const day = addDays(seasonStart(calendar, season), -7 * ORDER_WEEKS);
    return [
      {
        key: `order-${id}-FY${year}`,
        kind: 'order',
        starts: day,
        endsBefore: addDays(day, 1),
        summary: `Order ${items.join(', ')}`,
        description: `Needed in ${seasonLabel(calendar, season)}; ordered ${ORDER_WEEKS} weeks before it opens (common practice). ${WORK_CAUTIONS.order}`,
      },
    ];
  });
}

function askEvents(work: Work): WorkEvent[] {
  const { calendar, file, plan } = work;
  return plan.hires.flatMap((hire): WorkEvent[] => {
    const position = file.positions.find(({ id }) => id === hire.position);
    if (position === undefined) return [];
    const day = askDate(calendar, position, yearIndexOf(calendar, toFiscalYear(hire.year)));
    if (!isIn(work, fiscalYearOf(calendar, day))) return [];
    const many = hire.count === 1 ? '' : `${hire.count} x `;
    return [
      {
        key: `ask-${hire.position}-${hire.year}`,
        kind: 'ask',
        starts: day,
        endsBefore: addDays(day, 1),
        summary: `Last day to ask for ${many}${position.name}`,
        description: `To start in ${position.startSeason} of ${hire.year}; the lead time is ${counted(position.leadMonths, 'month')}. ${WORK_CAUTIONS.ask}`,
      },
    ];
  });
}
