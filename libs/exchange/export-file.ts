import type { CampusFile } from '#contracts/campus-file.schema.js';
import { toFiscalYear } from '#contracts/conversion/values.js';
import type { ExportFormat, ExportTable } from '#contracts/http/exports.js';
import type { PlanFile } from '#contracts/plan-file.js';
import { writeBundle } from './bundle/write-bundle.js';
import { workYear } from './calendar/work-year.js';
import { writeCalendar } from './calendar/write-calendar.js';
import { writeCsv } from './csv/write-csv.js';
import { writeGeoJson } from './geojson/write-geojson.js';
import {
  careTable,
  dictionaryTable,
  ledgerTable,
  scheduleTable,
} from './plan-tables/plan-tables.js';
import { siteTable, type Audience } from './sites/site-table.js';
import type { Table } from './table/table.js';
import { writeXlsx } from './xlsx/write-xlsx.js';

export interface ExportWish {
  readonly format: ExportFormat;
  readonly file: CampusFile;
  readonly plan?: PlanFile | undefined;
  /** Plans of a bundle by name. Left out: none. */
  readonly bundled?: ReadonlyMap<string, PlanFile> | undefined;
  /** The one table of a CSV file. */
  readonly table: ExportTable;
  /** Work year of a calendar, such as `FY2028`. Left out: the first year of the plan. */
  readonly year?: string | undefined;
  readonly audience: Audience;
}

export interface ExportedFile {
  readonly fileName: string;
  readonly mediaType: string;
  readonly bytes: Uint8Array;
}

/** Why a wish cannot be met. */
export type ExportRefusal = 'plan-needed' | 'not-public';

export type Export =
  | { readonly ok: true; readonly exported: ExportedFile }
  | { readonly ok: false; readonly refusal: ExportRefusal };

/** Writes a campus, or a plan of it, in a format that other programs read. */
export async function exportFile(wish: ExportWish): Promise<Export> {
  const { audience, file, format, plan } = wish;
  const named = (ending: string, mediaType: string, bytes: Uint8Array): Export => ({
    ok: true,
    exported: { fileName: `${file.id}-${ending}`, mediaType, bytes },
  });
  switch (format) {
    case 'geojson':
      return named('sites.geojson', 'application/geo+json', writeGeoJson({ file, plan }, audience));
    case 'csv': {
      const tables = tablesOf(wish);
      const table = tables.find(({ name }) => name === wish.table.replace('-', ' '));
      if (table === undefined) return { ok: false, refusal: 'plan-needed' };
      return named(`${wish.table}.csv`, 'text/csv; charset=utf-8; header=present', writeCsv(table));
    }
    case 'xlsx':
      return named('tables.xlsx', XLSX, await writeXlsx(tablesOf(wish)));
    case 'ics': {
      if (plan === undefined) return { ok: false, refusal: 'plan-needed' };
      const year = wish.year ?? file.calendar.firstYear;
      const head = { campusId: file.id, dataDate: file.dataDate, name: `${file.program}, ${year}` };
      const all = workYear({ file, plan }, toFiscalYear(year));
      const events = audience === 'public' ? all.filter(({ kind }) => kind !== 'ask') : all;
      return named(
        `work-year-${year}.ics`,
        'text/calendar; charset=utf-8',
        writeCalendar(events, head),
      );
    }
    case 'bundle': {
      if (audience === 'public') return { ok: false, refusal: 'not-public' };
      const bytes = writeBundle(file, wish.bundled ?? new Map<string, never>());
      return named('bundle.zip', 'application/zip', bytes);
    }
  }
}

const XLSX = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/** The sites, with a plan what it works out, and the dictionary of them all. */
function tablesOf({ audience, file, plan }: ExportWish): Table[] {
  const ofPlan = plan
    ? [
        scheduleTable({ file, plan }),
        careTable({ file, plan }),
        ledgerTable({ file, plan }, audience),
      ]
    : [];
  const tables = [siteTable({ file, plan }, audience), ...ofPlan];
  return [...tables, dictionaryTable(tables)];
}
