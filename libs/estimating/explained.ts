/** One number of an estimate, which opens to the numbers it was made of. `null` means unknown. */
export interface ExplainedNode {
  readonly name: string;
  readonly value: number | null;
  readonly unit: string;
  readonly formula: string;
  readonly source: string;
  readonly inputs: readonly ExplainedNode[];
}

/** A number that was measured, drawn or typed: the end of a branch. */
export function given(
  name: string,
  amount: { readonly value: number | null; readonly unit: string },
  source: string,
): ExplainedNode {
  return { name, ...amount, formula: 'given', source, inputs: [] };
}

/** A number that was computed; everything but the inputs can be left to the formula's own text. */
export function explained(
  node: Omit<ExplainedNode, 'source'> & { source?: string },
): ExplainedNode {
  return { source: 'arithmetic', ...node };
}

/** Adds nodes of one unit. Unknown as soon as one part is unknown: an unknown is never zero. */
export function sumOf(name: string, unit: string, parts: readonly ExplainedNode[]): ExplainedNode {
  let value: number | null = 0;
  for (const part of parts) {
    if (part.unit !== unit) {
      throw new RangeError(`${name} adds ${unit}, but ${part.name} is in ${part.unit}`);
    }
    value = value === null || part.value === null ? null : value + part.value;
  }
  return { name, value, unit, formula: 'sum of the parts', source: 'arithmetic', inputs: parts };
}
