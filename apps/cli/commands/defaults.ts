import { defaultsTable, type DefaultEntry, type DefaultsTable } from '#planning/defaults-table.js';
import { EXIT } from '../exit-codes.js';
import { numberText } from '../numbers.js';
import { asJson, type Output } from '../output.js';

export interface DefaultsOptions {
  readonly units: DefaultsTable['units'];
  readonly json?: true;
}

/** `defaults`: every planning coefficient with its range and where it comes from. */
export function defaults({ units, json }: DefaultsOptions, output: Output): number {
  const table = defaultsTable(units);
  if (json) {
    output.out(asJson(table));
    return EXIT.fine;
  }
  output.out('Low, typical and high. What a campus measured itself goes before any of these.');
  for (const { group, defaults: rows } of table.groups) {
    output.out('');
    output.out(group);
    for (const row of rows) output.out(`  ${defaultLine(row)}`);
  }
  return EXIT.fine;
}

function defaultLine(row: DefaultEntry): string {
  const { key, unit, provenance, source, year } = row;
  const range = [row.low, row.typical, row.high].map(numberText).join(' | ');
  return `${key}: ${range} ${unit}  [${provenance}: ${source} (${year})]`;
}
