import type { SiteEstimates, TypeEstimate } from '#planning/site-estimate.js';
import { valueText } from './numbers.js';

type Sections = TypeEstimate['sections'];
type Node = Sections['takeoff'][number];

const METRIC_NOTE =
  'Told in metric. The formulas are worked in feet, inches, cubic yards and pounds, and speak of those.';

const CAUTION =
  'Planning figures, not a design, a bid or a permit: local codes and licensed practice decide.';

/** A site's build-up as a person reads it: findings first, then every number above what made it. */
export function estimateLines(of: SiteEstimates): string[] {
  const { site, name, units, pricesOf, estimates } = of;
  return [
    `${site}, ${name}. Dollars are those of ${pricesOf}, nominal ones as they are spent.`,
    CAUTION,
    ...(units === 'metric' ? [METRIC_NOTE] : []),
    ...estimates.flatMap((estimate) => ['', ...typeLines(estimate)]),
  ];
}

function typeLines({ buildType, name, findings, sections }: TypeEstimate): string[] {
  const opened = new Set<string>();
  return [
    `As ${buildType}, ${name}`,
    ...findings.map((f) => `  ${f.severity}  ${f.field}: ${f.problem}. ${f.remedy}`),
    ...Object.entries(sections).flatMap(([section, nodes]) => [
      `  ${section}`,
      ...nodes.flatMap((node) => nodeLines(node, 2, opened)),
    ]),
  ];
}

/** A node and, indented, its inputs; one that was opened before is not opened again. */
function nodeLines(node: Node, depth: number, opened: Set<string>): string[] {
  const { name, value, unit, formula, source, inputs } = node;
  const line = `${name}: ${valueText(value, unit)}  [${formula}; ${source}]`;
  const indented = '  '.repeat(depth) + line;
  if (inputs.length === 0) return [indented];
  if (opened.has(line)) return [`${indented} (opened above)`];
  opened.add(line);
  return [indented, ...inputs.flatMap((input) => nodeLines(input, depth + 1, opened))];
}
