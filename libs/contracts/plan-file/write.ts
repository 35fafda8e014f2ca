import { planFileSchema, type PlanFile } from '../plan-file.schema.js';

/**
 * The text of a plan file: keys in the order of the schema, a line for each row, a newline at the
 * end. Equal files give equal bytes. Throws for a file that its own schema refuses.
 */
export function writePlanFile(file: PlanFile): string {
  const { plan, ...head } = planFileSchema.parse(file);
  const opening = JSON.stringify(head, null, 2).replace(/\n}$/, '');
  const lists = Object.entries(plan).map(([name, rows]) => `    "${name}": ${listText(rows)}`);
  return `${opening},\n  "plan": {\n${lists.join(',\n')}\n  }\n}\n`;
}

function listText(rows: readonly object[]): string {
  if (rows.length === 0) return '[]';
  const lines = rows.map((row) => `      ${JSON.stringify(row)}`);
  return `[\n${lines.join(',\n')}\n    ]`;
}
