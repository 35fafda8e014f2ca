import { nearest } from '#contracts/reading/nearest.js';
import { anError, aWarning, type Problem } from '#domain/problem.js';
import { PLANNED_COLUMNS, SITE_COLUMNS, type SiteColumn } from './site-columns.data.js';
import {
  CARE_COLUMNS,
  LEDGER_COLUMNS,
  SCHEDULE_COLUMNS,
} from '../plan-tables/plan-columns.data.js';

export interface HeaderReading {
  /** The column of each header; undefined: it is not read. */
  readonly columns: readonly (SiteColumn | undefined)[];
  readonly problems: readonly Problem[];
}

/** Finds the site column of each header. A header that may mean one of them is an error, another a warning. */
export function readHeaders(headers: readonly string[]): HeaderReading {
  const other = otherTable(headers);
  if (other) return { columns: [], problems: [other] };
  const names = headers.map((header) => header.toLowerCase().replace(/[\s-]+/g, '_'));
  const columns = names.map((name) => SITE_COLUMNS.find(({ header }) => header === name));
  const missing = names.includes('id') ? [] : [noId(headers)];
  const unread = names.flatMap((name, place) =>
    columns[place] === undefined ? unreadProblem(name, headers[place] ?? '') : [],
  );
  const twice = names.filter((name, place) => name !== '' && names.indexOf(name) < place);
  return { columns, problems: [...missing, ...unread, ...twice.map(columnTwice)] };
}

/** Tables that a plan works out; what they say cannot be put into a campus. */
function otherTable(headers: readonly string[]): Problem | undefined {
  const tables = { schedule: SCHEDULE_COLUMNS, 'care hours': CARE_COLUMNS, ledger: LEDGER_COLUMNS };
  const found = Object.entries(tables).find(([, columns]) =>
    columns.every(({ header }) => headers.includes(header)),
  );
  if (!found) return undefined;
  return anError({ code: 'IMPORT-WORKED-OUT', record: 'the file', field: '' }, [
    `This is the table "${found[0]}", which a plan works out; it cannot be read back.`,
    'Change the sites or the campus file, and solve again.',
  ]);
}

function noId(headers: readonly string[]): Problem {
  const value = headers.slice(0, 8).join(', ');
  return anError({ code: 'COLUMN-ID-MISSING', record: 'the file', field: 'id', value }, [
    'The table has no column "id", so nobody can tell which sites are meant.',
    'Let the first row hold the headers, with "id" among them; export the sites to see them all.',
  ]);
}

/** Units that people give areas in, and how many square feet each is. */
const AREA_UNITS: readonly (readonly [RegExp, string, string])[] = [
  [/^area_?(?:in_?)?(?:ac|acre|acres)$/, 'acres', '43,560'],
  [/^area_?(?:in_?)?(?:m2|m²|sqm|sq_m|square_met(?:er|re)s)$/, 'square meters', '10.7639'],
  [/^area_?(?:in_?)?(?:ha|hectares?)$/, 'hectares', '107,639'],
  [/^area_?(?:in_?)?(?:sy|yd2|sqyd|sq_yd|square_yards)$/, 'square yards', '9'],
];

function unreadProblem(name: string, header: string): Problem[] {
  if (name === '' || PLANNED_COLUMNS.some((column) => column.header === name)) return [];
  const place = { record: 'the file', field: header };
  const unit = AREA_UNITS.find(([pattern]) => pattern.test(name));
  if (unit) {
    return [
      anError({ code: 'COLUMN-UNIT', ...place }, [
        `The column "${header}" is in ${unit[1]}; areas are read in square feet.`,
        `Multiply by ${unit[2]} and call the column area_sf.`,
      ]),
    ];
  }
  const meant = nearest(
    name,
    SITE_COLUMNS.map((column) => column.header),
  );
  if (meant !== undefined) {
    return [
      anError({ code: 'COLUMN-MISSPELLED', ...place }, [
        `There is no column "${header}".`,
        `If ${meant} is meant, call it so; else give it quite another name, and it is not read.`,
      ]),
    ];
  }
  return [
    aWarning({ code: 'COLUMN-NOT-READ', ...place }, [
      `There is no column "${header}" in a site table; it was not read.`,
      'Nothing need be done if it is for your own use.',
    ]),
  ];
}

function columnTwice(name: string): Problem {
  return anError({ code: 'COLUMN-TWICE', record: 'the file', field: name }, [
    `The column "${name}" is there twice.`,
    'Keep one of the two.',
  ]);
}
