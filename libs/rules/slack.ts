import type { Term } from '#mip/model.js';
import type { ModelDraft } from '#mip/model-draft.js';

/** A shortfall column as a term, or none where the promise must be kept whole. */
export function slackTerms(
  draft: ModelDraft,
  slack: 'allowed' | 'none',
  column: { readonly label: string; readonly upper: number },
): Term[] {
  if (slack === 'none') return [];
  const variable = draft.addVariable({
    label: `short ${column.label}`,
    kind: 'continuous',
    upper: column.upper,
  });
  return [{ variable, coefficient: 1 }];
}
