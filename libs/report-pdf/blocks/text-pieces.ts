import type { Tag } from '../tags/tag-tree.js';
import type { TextLine } from '../text/break-lines.js';
import type { StyledText } from '../text/styled-text.js';
import type { TypeStyle } from '../text/type-styles.js';
import type { Piece } from '../pieces/piece.js';
import { piece } from '../pieces/piece.js';
import type { LayoutContext } from './layout-context.js';

export interface TextSetting {
  readonly tag: Tag;
  readonly runs: readonly StyledText[];
  readonly style: TypeStyle;
  /** Distance of the lines from the left edge; the width shrinks by as much. */
  readonly indent?: number;
}

/** Distance from the top of a line to its baseline: capitals stand in the middle of the line. */
export function baseline(style: TypeStyle): number {
  return style.leading / 2 + 0.33 * style.size;
}

/** One piece per line, with no first or last line of three or more left alone on a page. */
export function textPieces(context: LayoutContext, setting: TextSetting): readonly Piece[] {
  const indent = setting.indent ?? 0;
  const lines = context.canvas.lines(setting.runs, context.width - indent);
  return lines.map((line, index) =>
    piece(
      setting.style.leading,
      (at) =>
        context.tags.content(setting.tag, () =>
          context.canvas.drawLine(line, {
            x: at.x + indent,
            y: at.y + baseline(setting.style),
          }),
        ),
      { keep: index === 0 || index === lines.length - 2 ? keepUnlessLast(lines, index) : 'alone' },
    ),
  );
}

function keepUnlessLast(lines: readonly TextLine[], index: number): Piece['keep'] {
  return index < lines.length - 1 ? 'next' : 'alone';
}
