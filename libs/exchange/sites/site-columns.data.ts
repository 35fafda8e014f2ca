import type { ColumnHead } from '../table/table.js';

/** How the text of a cell becomes the value of a field. */
export type CellKind =
  'id' | 'stage' | 'text' | 'number' | 'flag' | 'ids' | 'year' | 'lines' | 'boundary' | 'gates';

export interface SiteColumn extends ColumnHead {
  readonly kind: CellKind;
  /** Path of the field in a site of a campus file. */
  readonly path: readonly string[];
  /** May be written as `unknown`. */
  readonly mayBeUnknown?: true;
  /** May be left out of a site: `none` takes it away. */
  readonly mayBeNone?: true;
  /** Only on sites of this stage. */
  readonly only?: 'candidate' | 'existing';
  /** Not in copies for people outside: lab values, utility detail, notes. */
  readonly internal?: true;
}

const fact = (name: string): readonly string[] => ['facts', name];

/** The columns of the site table, in order. Whoever reads one takes its meaning from here. */
export const SITE_COLUMNS: readonly SiteColumn[] = [
  {
    header: 'id',
    unit: 'identifier',
    kind: 'id',
    path: ['id'],
    meaning: 'Tells which site is meant; never changes.',
  },
  {
    header: 'stage',
    unit: 'candidate or existing',
    kind: 'stage',
    path: [],
    meaning:
      'Being considered, or planted before the plan begins. Left blank for a new site: candidate.',
  },
  {
    header: 'name',
    unit: 'text',
    kind: 'text',
    path: ['name'],
    meaning: 'What people call the place.',
  },
  {
    header: 'zone',
    unit: 'zone id',
    kind: 'text',
    path: ['zone'],
    meaning: 'Campus area used for balance.',
  },
  {
    header: 'area_sf',
    unit: 'square feet',
    kind: 'number',
    path: ['areaSqFt'],
    meaning:
      'Stated area. Planning uses the drawn area where they disagree by more than 5 % and this one was not confirmed.',
  },
  {
    header: 'area_confirmed',
    unit: 'yes or no',
    kind: 'flag',
    path: ['areaConfirmed'],
    mayBeNone: true,
    meaning: 'Yes: the stated area holds against the drawn one.',
  },
  {
    header: 'build_types',
    unit: 'build type ids, set apart by semicolons',
    kind: 'ids',
    path: ['buildTypes'],
    only: 'candidate',
    meaning: 'What the site may become.',
  },
  {
    header: 'earliest_year',
    unit: 'fiscal year, such as FY2028',
    kind: 'year',
    path: ['earliest'],
    mayBeNone: true,
    only: 'candidate',
    meaning: 'First fiscal year in which it may be prepared.',
  },
  {
    header: 'latest_year',
    unit: 'fiscal year, such as FY2028',
    kind: 'year',
    path: ['latest'],
    mayBeNone: true,
    only: 'candidate',
    meaning: 'Last fiscal year in which it may be prepared.',
  },
  {
    header: 'cost_factor',
    unit: 'ratio',
    kind: 'number',
    path: ['costFactor'],
    only: 'candidate',
    meaning: "Capital cost against the build type's own. Left blank for a new site: 1.",
  },
  {
    header: 'build_type',
    unit: 'build type id',
    kind: 'text',
    path: ['buildType'],
    only: 'existing',
    meaning: 'What was planted.',
  },
  {
    header: 'planted_calendar_year',
    unit: 'calendar year',
    kind: 'number',
    path: ['plantedCalendarYear'],
    only: 'existing',
    meaning: 'Calendar year of the season in which it was planted.',
  },
  {
    header: 'cover',
    unit: 'text',
    kind: 'text',
    path: fact('cover'),
    mayBeUnknown: true,
    meaning: 'What grows there now.',
  },
  {
    header: 'soil',
    unit: 'text',
    kind: 'text',
    path: fact('soil'),
    mayBeUnknown: true,
    meaning: 'Kind of soil.',
  },
  {
    header: 'ph',
    unit: 'pH',
    kind: 'number',
    path: fact('ph'),
    mayBeUnknown: true,
    internal: true,
    meaning: 'Soil pH.',
  },
  {
    header: 'organic_matter_percent',
    unit: 'percent',
    kind: 'number',
    path: fact('organicMatterPercent'),
    mayBeUnknown: true,
    internal: true,
    meaning: 'Organic matter of the soil.',
  },
  {
    header: 'lead_mg_per_kg',
    unit: 'mg/kg',
    kind: 'number',
    path: fact('leadMgPerKg'),
    mayBeUnknown: true,
    internal: true,
    meaning:
      'Total lead: a screening result, not a clearance. Environmental health and safety decides.',
  },
  {
    header: 'slope_percent',
    unit: 'percent',
    kind: 'number',
    path: fact('slopePercent'),
    mayBeUnknown: true,
    meaning: 'Slope of the ground.',
  },
  {
    header: 'sun_hours_per_day',
    unit: 'hours a day',
    kind: 'number',
    path: fact('sunHours'),
    mayBeUnknown: true,
    meaning: 'Mean daily hours of sun from 1 May to 15 September.',
  },
  {
    header: 'walkers_per_day',
    unit: 'people a day',
    kind: 'number',
    path: fact('walkersPerDay'),
    mayBeUnknown: true,
    meaning: 'People who walk past.',
  },
  {
    header: 'water_ft',
    unit: 'feet',
    kind: 'number',
    path: fact('waterFeet'),
    mayBeUnknown: true,
    internal: true,
    meaning: 'Distance to a water connection.',
  },
  {
    header: 'kitchen_ft',
    unit: 'feet',
    kind: 'number',
    path: fact('kitchenFeet'),
    mayBeUnknown: true,
    meaning: 'Distance to the nearest kitchen.',
  },
  {
    header: 'truck_access',
    unit: 'yes or no',
    kind: 'flag',
    path: fact('truckAccess'),
    mayBeUnknown: true,
    meaning: 'A truck reaches the ground.',
  },
  {
    header: 'root_protected_share',
    unit: 'share, 0 to 1',
    kind: 'number',
    path: fact('rootProtectedShare'),
    mayBeUnknown: true,
    meaning: 'Share of the site within root protection areas.',
  },
  {
    header: 'gates_passed',
    unit: 'gate kinds, set apart by semicolons',
    kind: 'gates',
    path: ['gates', 'pass'],
    internal: true,
    meaning: 'Screening gates that are passed.',
  },
  {
    header: 'gates_failed',
    unit: 'gate kinds, set apart by semicolons',
    kind: 'gates',
    path: ['gates', 'fail'],
    internal: true,
    meaning: 'Screening gates that are not passed.',
  },
  {
    header: 'gates_unknown',
    unit: 'gate kinds, set apart by semicolons',
    kind: 'gates',
    path: ['gates', 'unknown'],
    internal: true,
    meaning: 'Screening gates of which it is not known whether they are passed.',
  },
  {
    header: 'notes',
    unit: 'text, a line each',
    kind: 'lines',
    path: ['notes'],
    only: 'candidate',
    internal: true,
    meaning: 'What else is to be kept in mind.',
  },
  {
    header: 'boundary_wkt',
    unit: 'WKT polygon; longitude latitude in degrees, WGS 84',
    kind: 'boundary',
    path: ['boundary'],
    meaning:
      'Outline of the site, holes after it. Left blank where a spreadsheet cell cannot hold it.',
  },
];

/** Columns of plans, which the site table may carry beside its own and which are never read back. */
export const PLANNED_COLUMNS: readonly ColumnHead[] = [
  {
    header: 'planned_year',
    unit: 'fiscal year',
    meaning:
      'Fiscal year in which the plan prepares the site. Worked out by a plan; not read back.',
  },
  {
    header: 'planned_build_type',
    unit: 'build type id',
    meaning: 'What the site becomes in the plan. Worked out by a plan; not read back.',
  },
];
