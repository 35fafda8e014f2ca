import type { FileView } from './file-view.js';
import type { Reference } from './reference.js';

/** Every place that names a season. */
export function seasonReferences(view: FileView): readonly Reference[] {
  return [
    ...calendarReferences(view),
    ...laborReferences(view),
    ...careReferences(view),
    ...(view.compost
      ? [
          ...keys('compost', 'madeCubicYards', view.compost.madeCubicYards),
          ...keys(
            'compost',
            'otherGrade.madeCubicYards',
            view.compost.otherGrade?.madeCubicYards ?? {},
          ),
          one('compost', 'topDressSeason', view.compost.topDressSeason),
        ]
      : []),
    ...view.commitments.flatMap(({ id, test }) =>
      test.kind === 'no-unserved-care' && test.seasons !== 'all'
        ? test.seasons.map((to) => one(`commitment ${id}`, 'test.seasons', to))
        : [],
    ),
  ];
}

function calendarReferences({ calendar }: FileView): Reference[] {
  if (!calendar) return [];
  return [
    one('calendar', 'prepareSeason', calendar.prepareSeason),
    one('calendar', 'plantSeason', calendar.plantSeason),
  ];
}

function laborReferences(view: FileView): Reference[] {
  return [
    ...view.pools.flatMap((pool) => keys(`pool ${pool.id}`, 'hours', pool.hours)),
    ...view.workDays.map((day) => one(`work day ${day.id}`, 'season', day.season)),
    ...view.positions.flatMap((position) => {
      const record = `position ${position.id}`;
      return [
        one(record, 'startSeason', position.startSeason),
        ...keys(record, 'hours', position.hours),
        ...keys(record, 'firstYearHours', position.firstYearHours),
      ];
    }),
  ];
}

function careReferences({ care }: FileView): Reference[] {
  return Object.entries(care ?? {}).flatMap(([component, coefficients]) => [
    ...keys(`care ${component}`, 'seasonShares', coefficients.seasonShares),
    ...keys(`care ${component}`, 'harvestSeasonShares', coefficients.harvestSeasonShares),
  ]);
}

function one(record: string, field: string, to: string): Reference {
  return { record, field, to };
}

function keys(record: string, field: string, bySeason: Readonly<Record<string, number>>) {
  return Object.keys(bySeason).map((to) => one(record, `${field}.${to}`, to));
}
