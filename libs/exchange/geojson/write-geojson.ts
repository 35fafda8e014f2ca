import type { CampusFile } from '#contracts/campus-file.schema.js';
import type { PlanFile } from '#contracts/plan-file.js';
import { siteCell } from '../sites/site-cells.js';
import { siteRecords } from '../sites/site-record.js';
import { columnsFor, plannedCells, type Audience } from '../sites/site-table.js';
import type { Cell } from '../table/table.js';
import { rightHanded } from './winding.js';

/**
 * The sites as an RFC 7946 FeatureCollection, one line for each: longitude and latitude in WGS 84,
 * rings by the right hand; the properties are the columns of the site table. With a plan, each
 * feature also tells when the plan prepares it and as what.
 */
export function writeGeoJson(
  { file, plan }: { readonly file: CampusFile; readonly plan?: PlanFile | undefined },
  audience: Audience,
): Uint8Array {
  const columns = columnsFor(audience).filter(({ kind }) => kind !== 'boundary');
  const planned = plan && plannedCells(plan);
  const features = siteRecords(file).map((record) => {
    const own = columns.map(({ header }, place): [string, Cell] => {
      const column = columns[place];
      return [header, column === undefined ? null : siteCell(record, column)];
    });
    const [year = null, buildType = null] = planned?.(record.site.id) ?? [];
    const ofPlan = planned ? { planned_year: year, planned_build_type: buildType } : {};
    return JSON.stringify({
      type: 'Feature',
      id: record.site.id,
      geometry: { type: 'Polygon', coordinates: rightHanded(record.site.boundary.coordinates) },
      properties: { ...Object.fromEntries(own), ...ofPlan },
    });
  });
  const text = `{\n"type": "FeatureCollection",\n"features": [\n${features.join(',\n')}\n]\n}\n`;
  return new TextEncoder().encode(text);
}
