import type { CampusFile } from '#contracts/campus-file.schema.js';
import { careShareId } from '#contracts/conversion/funds.js';
import type { PlanFile } from '#contracts/plan-file.js';
import type { Cell, ColumnHead, Table } from '../table/table.js';
import type { Audience } from '../sites/site-table.js';
import { CARE_COLUMNS, LEDGER_COLUMNS, SCHEDULE_COLUMNS } from './plan-columns.data.js';

export interface Planned {
  readonly file: CampusFile;
  readonly plan: PlanFile;
}

/** What the plan builds, year by year. */
export function scheduleTable({ file, plan }: Planned): Table {
  const sites = new Map(
    [...file.candidateSites, ...file.existingSites].map((site) => [site.id, site]),
  );
  return {
    name: 'schedule',
    columns: SCHEDULE_COLUMNS,
    rows: plan.plan.placements.map(({ year, site, buildType }) => {
      const place = sites.get(site);
      return [year, site, place?.name ?? null, place?.zone ?? null, buildType];
    }),
  };
}

/** Hours of care and harvest, season by season: who gives them, and what no one is there for. */
export function careTable({ plan }: Planned): Table {
  const isCare = ({ taskClass }: { taskClass: string }): boolean => CARE_CLASSES.has(taskClass);
  return {
    name: 'care hours',
    columns: CARE_COLUMNS,
    rows: [
      ...plan.plan.labor
        .filter(isCare)
        .map((row): Cell[] => [row.year, row.season, row.taskClass, row.source, row.hours, null]),
      ...plan.plan.unserved
        .filter(isCare)
        .map((row): Cell[] => [row.year, row.season, row.taskClass, null, null, row.hours]),
    ],
  };
}

const CARE_CLASSES: ReadonlySet<string> = new Set(['care-food', 'care-other', 'harvest']);

/** Every dollar that the plan spends. In a copy for people outside, gifts are told by their kind. */
export function ledgerTable({ file, plan }: Planned, audience: Audience): Table {
  const kinds = new Map(
    file.funds.flatMap(({ id, kind }) => [
      [id, kind],
      [careShareId(id), kind],
    ]),
  );
  const shown = (fund: string): string =>
    audience === 'campus' ? fund : (kinds.get(fund) ?? 'other');
  return {
    name: 'ledger',
    columns: LEDGER_COLUMNS,
    rows: plan.plan.spending.map(({ year, fund, inflow, line, site, dollars, repaidBy }) => [
      year,
      shown(fund),
      inflow,
      line,
      site ?? null,
      dollars,
      repaidBy ? shown(repaidBy.fund) : null,
    ]),
  };
}

/** Every column of other tables: its unit and what it means. */
export function dictionaryTable(tables: readonly Table[]): Table {
  const heads: readonly ColumnHead[] = [
    { header: 'table', unit: 'text', meaning: 'Name of the table.' },
    { header: 'column', unit: 'text', meaning: 'Header of the column.' },
    { header: 'unit', unit: 'text', meaning: 'Unit, or what kind of text stands there.' },
    { header: 'meaning', unit: 'text', meaning: 'What the column tells.' },
  ];
  return {
    name: 'dictionary',
    columns: heads,
    rows: [...tables, { name: 'dictionary', columns: heads }].flatMap(({ name, columns }) =>
      columns.map(({ header, unit, meaning }) => [name, header, unit, meaning]),
    ),
  };
}
