import type { Signatures } from '#report/document/boxes.js';
import type { Point } from '#report/document/drawing.js';
import type { Piece } from '../pieces/piece.js';
import { spaced, together } from '../pieces/piece.js';
import { styledRuns } from '../text/styled-text.js';
import { TYPE } from '../text/type-styles.js';
import type { LayoutContext } from './layout-context.js';
import { within } from './layout-context.js';
import { textPieces } from './text-pieces.js';

// Part of the piece and no gap, since gaps may close up and a signature needs its room.
const SPACE_TO_SIGN = 24;
const DATE_SHARE = 0.28;
const GUTTER = 18;

/** A statement and, for each role, a line for the signature and one for the date. */
export function signaturePieces(block: Signatures, context: LayoutContext): readonly Piece[] {
  const tag = context.tags.add(context.parent, 'P');
  const runs = styledRuns(block.statement, TYPE.body);
  const statement = textPieces(context, { tag, runs, style: TYPE.body });
  const lines = block.signers.flatMap((role) => signerPieces(role, context));
  return spaced(together([...statement, ...lines]), 16);
}

function signerPieces(role: string, context: LayoutContext): readonly Piece[] {
  const dateWidth = DATE_SHARE * context.width;
  const signWidth = context.width - dateWidth - GUTTER;
  const signer = smallLines(`${role}: name and signature`, within(context, { width: signWidth }));
  const [date] = smallLines('Date', within(context, { width: dateWidth }));
  return signer.map((line, index) => {
    if (index > 0) return line;
    const draw = (top: Point) => {
      const at = { x: top.x, y: top.y + SPACE_TO_SIGN };
      const right = { x: at.x + signWidth + GUTTER, y: at.y };
      signingRule(at, signWidth, context);
      line.draw(at);
      signingRule(right, dateWidth, context);
      date?.draw(right);
    };
    return { ...line, height: SPACE_TO_SIGN + line.height, draw };
  });
}

function smallLines(text: string, context: LayoutContext): readonly Piece[] {
  const tag = context.tags.add(context.parent, 'P');
  const style = TYPE.small;
  return textPieces(context, { tag, runs: [{ text, style }], style });
}

function signingRule(at: Point, width: number, { canvas, tags }: LayoutContext): void {
  const rule = { color: 'ink', width: 0.5 } as const;
  tags.artifact('Layout', () => canvas.drawRule(at, { x: at.x + width, y: at.y }, rule));
}
