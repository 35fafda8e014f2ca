import type { CampusFile } from '#contracts/campus-file.schema.js';
import type { Cell } from '../table/table.js';
import type { SiteColumn } from './site-columns.data.js';
import type { SiteRecord } from './site-record.js';
import { toWkt } from './wkt.js';

type Gate = CampusFile['candidateSites'][number]['gates'][number];

/** What stands in one column for a site; null where the site has nothing there. */
export function siteCell({ stage, site }: SiteRecord, column: SiteColumn): Cell {
  if (column.kind === 'stage') return stage;
  if (column.only !== undefined && column.only !== stage) return null;
  if (column.kind === 'gates') return gateCell(site.gates, column.path[1]);
  const value = valueAt(site, column.path);
  switch (column.kind) {
    case 'ids':
      return Array.isArray(value) ? value.join('; ') : null;
    case 'lines':
      return Array.isArray(value) && value.length > 0 ? value.join('\n') : null;
    case 'boundary':
      // A site that is only being put together may have no boundary yet.
      return value === undefined ? null : toWkt(site.boundary.coordinates);
    default:
      return plainCell(value);
  }
}

/** Kinds of the gates with a status, in the order of the file; a kind twice where two gates are of it. */
function gateCell(gates: readonly Gate[], status: string | undefined): Cell {
  const kinds = gates.filter((gate) => gate.status === status).map(({ kind }) => kind);
  return kinds.length === 0 ? null : kinds.join('; ');
}

function plainCell(value: unknown): Cell {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return typeof value === 'number' || typeof value === 'string' ? value : null;
}

export function valueAt(record: object, path: readonly string[]): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null
        ? (value as Record<string, unknown>)[key]
        : undefined,
    record,
  );
}
