import {
  defaultsTable,
  type DefaultEntry,
  type DefaultsTable,
  type MeasuredEntry,
} from '#planning/defaults-table.js';
import { EXIT } from '../exit-codes.js';
import { numberText } from '../numbers.js';
import { asJson, type Output } from '../output.js';
import { readCampus } from '../read-files.js';

export interface DefaultsOptions {
  readonly units: DefaultsTable['units'];
  readonly json?: true;
}

/**
 * `defaults [CAMPUS.json]`: every planning coefficient with its range and where it comes from, and
 * what the campus measured in its place.
 */
export async function defaults(
  path: string | undefined,
  { units, json }: DefaultsOptions,
  output: Output,
): Promise<number> {
  const campus = path === undefined ? undefined : (await readCampus(path)).campus;
  const table = defaultsTable(units, campus);
  if (json) {
    output.out(asJson(table));
    return EXIT.fine;
  }
  output.out('Low, typical and high. What a campus measured itself goes before any of these.');
  for (const { group, defaults: rows } of table.groups) {
    output.out('');
    output.out(group);
    for (const row of rows) for (const line of defaultLines(row)) output.out(`  ${line}`);
  }
  return EXIT.fine;
}

function defaultLines(row: DefaultEntry): string[] {
  const { key, unit, provenance, source, year } = row;
  const range = [row.low, row.typical, row.high].map(numberText).join(' | ');
  const line = `${key}: ${range} ${unit}  [${provenance}: ${source} (${year})]`;
  return [line, ...row.measured.map((own) => `  ${measuredLine(own, unit)}`)];
}

function measuredLine({ site, value, source }: MeasuredEntry, unit: string): string {
  const where = site === null ? 'on this campus' : `at ${site}`;
  return `instead, ${where}: ${numberText(value)} ${unit}  [measured: ${source}]`;
}
