import type { CampusFile } from '#contracts/campus-file.schema.js';
import type { PlanFile } from '#contracts/plan-file.js';
import type { Cell, Table } from '../table/table.js';
import { siteCell } from './site-cells.js';
import { PLANNED_COLUMNS, SITE_COLUMNS, type SiteColumn } from './site-columns.data.js';
import { siteRecords } from './site-record.js';

/** For whom a copy is: everything, or only what people outside may see. */
export type Audience = 'campus' | 'public';

export function columnsFor(audience: Audience): readonly SiteColumn[] {
  return SITE_COLUMNS.filter(({ internal }) => audience === 'campus' || internal !== true);
}

/** Every site, candidates first; with a plan, also when it prepares each and as what. */
export function siteTable(
  { file, plan }: { readonly file: CampusFile; readonly plan?: PlanFile | undefined },
  audience: Audience,
): Table {
  const columns = columnsFor(audience);
  const planned = plan && plannedCells(plan);
  return {
    name: 'sites',
    columns: [...columns, ...(planned ? PLANNED_COLUMNS : [])],
    rows: siteRecords(file).map((record) => [
      ...columns.map((column) => siteCell(record, column)),
      ...(planned?.(record.site.id) ?? []),
    ]),
  };
}

/** The plan's year and build type of a site; empty where it is not built. */
export function plannedCells({ plan }: PlanFile): (site: string) => [Cell, Cell] {
  const bySite = new Map(plan.placements.map((placement) => [placement.site, placement]));
  return (site) => [bySite.get(site)?.year ?? null, bySite.get(site)?.buildType ?? null];
}
