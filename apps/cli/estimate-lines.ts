import type { SiteEstimates, TypeEstimate } from '#planning/site-estimate.js';
import { valueText } from './numbers.js';

type Sections = TypeEstimate['sections'];
type Node = Sections['takeoff'][number];

/** A site's build-up as a person reads it: findings first, then every number above what made it. */
export function estimateLines(of: SiteEstimates): string[] {
  const { site, name, notes, gates, suitability, estimates } = of;
  return [
    `${site}, ${name}`,
    ...notes,
    '',
    'Gates: never weighed against a score',
    ...gates.flatMap(gateLines),
    ...suitabilityLines(suitability),
    ...estimates.flatMap((estimate) => ['', ...typeLines(estimate)]),
  ];
}

type Gate = SiteEstimates['gates'][number];

function gateLines({ kind, status, note, clearedBy, ask, asOf, basis, measured }: Gate): string[] {
  const dated = asOf === null ? '' : `; numbers as of ${asOf}, confirm with the authority`;
  const beside = measured === null || basis !== 'stated' ? [] : [`    measured: ${measured}`];
  const clears = clearedBy === '' ? [] : [`    ${CLEARS[status]}: ${clearedBy}`];
  return [
    `  ${kind}: ${status} (${basis}). ${note}`,
    ...beside,
    ...clears,
    `    ask: ${ask}${dated}`,
  ];
}

const CLEARS: Readonly<Record<Gate['status'], string>> = {
  pass: 'mind',
  fail: 'what would clear it',
  unknown: 'what would clear it',
};

function suitabilityLines(nodes: SiteEstimates['suitability']): string[] {
  if (nodes.length === 0) return [];
  const opened = new Set<string>();
  return ['', 'Suitability', ...nodes.flatMap((node) => nodeLines(node, 1, opened))];
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
