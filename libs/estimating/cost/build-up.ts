import { type ExplainedNode, explained, sumOf } from '../explained.js';

export interface BuildUp {
  /** Dollars of the price year: materials, plants, path, water, sign, contractor, supervision. */
  readonly direct: readonly ExplainedNode[];
  /** Design, permits and administration, as a node of share unit. */
  readonly softShare: ExplainedNode;
  readonly testingAndLocating: ExplainedNode;
  readonly contingencyShare: ExplainedNode;
  /** Price growth to the midpoint of spending, 1 or thereabouts. */
  readonly escalation: ExplainedNode;
}

/**
 * Likely cost of a build in dollars of the year of spending.
 *
 *     (direct x (1 + soft) + testing and locating) x (1 + contingency) x escalation
 *
 * Unknown as soon as one part is unknown. Source: build-up used in class 5 estimates; the shares are defaults.
 */
export function buildUpCost(parts: BuildUp): ExplainedNode {
  const direct = sumOf('direct cost', '$', parts.direct);
  const soft = product('soft cost', direct, parts.softShare);
  const before = sumOf('before contingency', '$', [direct, soft, parts.testingAndLocating]);
  const contingency = product('contingency', before, parts.contingencyShare);
  const priceYear = sumOf('cost in the price year', '$', [before, contingency]);
  return product('likely cost', priceYear, parts.escalation);
}

/** Dollars times a share or factor. */
function product(name: string, dollars: ExplainedNode, factor: ExplainedNode): ExplainedNode {
  const known = dollars.value !== null && factor.value !== null;
  return explained({
    name,
    value: known ? (dollars.value ?? 0) * (factor.value ?? 0) : null,
    unit: '$',
    formula: `${dollars.name} x ${factor.name}`,
    inputs: [dollars, factor],
  });
}
