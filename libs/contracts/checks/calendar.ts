import { anError, aWarning, type Problem, type ProblemText } from '#domain/problem.js';
import { fiscalYearOf } from '#domain/calendar.js';
import type { CalendarPart, FileView } from './file-view.js';

/** Seasons that partition the year in order, dates that run forward, years that fit together. */
export function calendarProblems(view: FileView): Problem[] {
  const { calendar } = view;
  if (!calendar) return [];
  return [
    ...partitionProblems(calendar),
    ...orderProblems(calendar),
    ...sameSeasonProblems(calendar),
    ...termProblems(calendar),
    ...planningDateProblems(view, calendar),
  ];
}

/** Each month belongs to exactly one season. */
export function partitionsTheYear({ seasons }: Pick<CalendarPart, 'seasons'>): boolean {
  const months = seasons.flatMap((season) => season.months);
  return months.length === 12 && new Set(months).size === 12;
}

function partitionProblems(calendar: CalendarPart): Problem[] {
  if (partitionsTheYear(calendar)) return [];
  const months = calendar.seasons.flatMap((season) => season.months);
  const twice = [...new Set(months.filter((m, i) => months.indexOf(m) !== i))];
  const none = Array.from({ length: 12 }, (_, i) => i + 1).filter((m) => !months.includes(m));
  const said = [
    ...(none.length > 0 ? [`month ${none.join(', ')} lies in no season`] : []),
    ...(twice.length > 0 ? [`month ${twice.join(', ')} lies in more than one`] : []),
  ];
  return [
    calendarError('SEASONS-NOT-A-PARTITION', 'seasons', [
      `The seasons do not share out the twelve months: ${said.join('; ')}.`,
      'Give each month to exactly one season.',
    ]),
  ];
}

/** Seasons run on without a gap, in the order in which they open within a fiscal year. */
function orderProblems(calendar: CalendarPart): Problem[] {
  if (!partitionsTheYear(calendar)) return [];
  const months = calendar.seasons.flatMap((season) => season.months);
  const runsOn = months.every((m, i) => i === 0 || m === ((months[i - 1] ?? 0) % 12) + 1);
  const opensInFirst = calendar.seasons[0]?.months.includes(calendar.fiscalYearStartMonth);
  if (runsOn && opensInFirst) return [];
  return [
    calendarError('SEASONS-OUT-OF-ORDER', 'seasons', [
      'The seasons do not follow one another from the opening of the fiscal year.',
      `Begin with the season that holds month ${calendar.fiscalYearStartMonth}, and list months and seasons as they come.`,
    ]),
  ];
}

function sameSeasonProblems({ prepareSeason, plantSeason }: CalendarPart): Problem[] {
  if (prepareSeason !== plantSeason) return [];
  return [
    calendarError('CALENDAR-NO-REST', 'plantSeason', [
      'A site is prepared and planted in the same season, so its layers never rest.',
      'Name the next season in which planting is possible.',
    ]),
  ];
}

function termProblems({ terms }: CalendarPart): Problem[] {
  if (terms.length === 0) {
    const place = { code: 'TERMS-NOT-RECORDED', record: 'calendar', field: 'terms' };
    const text: ProblemText = [
      'No term dates are recorded, so work days cannot be held against them.',
      "Add the terms from the registrar's calendar.",
    ];
    return [aWarning(place, text)];
  }
  return terms
    .filter(({ starts, ends }) => ends < starts)
    .map(({ name, starts, ends }) =>
      anError(
        {
          code: 'TERM-DATES-INVERTED',
          record: 'calendar',
          field: `terms[${name}].ends`,
          value: ends,
        },
        [`The term ends on ${ends}, before it starts on ${starts}.`, 'Swap or correct the dates.'],
      ),
    );
}

function planningDateProblems({ time }: FileView, calendar: CalendarPart): Problem[] {
  if (!time) return [];
  const year = fiscalYearOf(time, calendar.planningDate);
  if (year <= time.firstYear && year >= time.firstYear - 3) return [];
  return [
    calendarError('CALENDAR-PLANNING-DATE', 'planningDate', [
      `The planning date lies in FY${year}, but the plan begins in ${calendar.firstYear}.`,
      'Plan from a day within the first year or at most three years before it.',
    ]),
  ];
}

function calendarError(code: string, field: keyof CalendarPart, text: ProblemText): Problem {
  return anError({ code, record: 'calendar', field }, text);
}
