import type { Inline } from '#report/document/inline.js';
import { runsOf } from '#report/document/inline.js';
import type { TypeStyle } from './type-styles.js';
import { emboldened, italicized } from './type-styles.js';

/** A stretch of text in one type style. */
export interface StyledText {
  readonly text: string;
  readonly style: TypeStyle;
}

/** The runs of an inline text, each in the base style or its bold or italic face. */
export function styledRuns(inline: Inline, base: TypeStyle): readonly StyledText[] {
  return runsOf(inline).map((run) => {
    const weighted = run.bold ? emboldened(base) : base;
    return { text: run.text, style: run.italic ? italicized(weighted) : weighted };
  });
}
