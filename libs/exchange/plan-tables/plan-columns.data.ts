import type { ColumnHead } from '../table/table.js';

const year: ColumnHead = {
  header: 'fiscal_year',
  unit: 'fiscal year, such as FY2028',
  meaning: 'Fiscal year, named by the calendar year in which it ends.',
};

export const SCHEDULE_COLUMNS: readonly ColumnHead[] = [
  { ...year, meaning: 'Fiscal year in which the site is prepared.' },
  { header: 'site', unit: 'site id', meaning: 'Site that is prepared.' },
  { header: 'name', unit: 'text', meaning: 'What people call the place.' },
  { header: 'zone', unit: 'zone id', meaning: 'Campus area that it lies in.' },
  { header: 'build_type', unit: 'build type id', meaning: 'What the site becomes.' },
];

export const CARE_COLUMNS: readonly ColumnHead[] = [
  { ...year, meaning: 'Fiscal year to which the season belongs.' },
  { header: 'season', unit: 'season id', meaning: 'Season in which the hours are wanted.' },
  { header: 'work', unit: 'care-food, care-other or harvest', meaning: 'Class of work.' },
  {
    header: 'given_by',
    unit: 'id of a pool, position or work day',
    meaning: 'Who gives the hours; blank where no one is there.',
  },
  { header: 'given_h', unit: 'hours', meaning: 'Effective hours that the plan has them give.' },
  { header: 'unserved_h', unit: 'hours', meaning: 'Hours of care wanted with no one to do them.' },
];

export const LEDGER_COLUMNS: readonly ColumnHead[] = [
  { ...year, meaning: 'Fiscal year in which the money is spent.' },
  { header: 'fund', unit: 'fund id', meaning: 'Fund that pays; in a public copy, its kind.' },
  {
    header: 'inflow',
    unit: 'number from 0',
    meaning: "Place of the money in the fund's list of inflows.",
  },
  {
    header: 'line',
    unit: 'build, care, positions, compost or standing',
    meaning: 'What it is spent on.',
  },
  { header: 'site', unit: 'site id', meaning: 'Site that is paid for, where it is one.' },
  { header: 'amount_usd', unit: 'US dollars of the year', meaning: 'Dollars spent, to the cent.' },
  {
    header: 'paid_back_by',
    unit: 'fund id',
    meaning: 'Reimbursable grant that pays it back later; in a public copy, its kind.',
  },
];
