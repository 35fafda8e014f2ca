import type { Point } from '#report/document/drawing.js';
import type { CalloutTone } from '#report/document/boxes.js';
import type { ColorName } from '../page/colors.js';
import type { Piece } from '../pieces/piece.js';
import { piece } from '../pieces/piece.js';
import type { LayoutContext } from './layout-context.js';

/** Distance from a frame's edge to its text, left and right. */
export const FRAME_PAD = 14;
const PAD_Y = 9;

interface FrameLook {
  readonly bar: number;
  readonly color: ColorName;
  readonly ground: ColorName;
  readonly outline: 'none' | 'ink';
}

// A caution is outlined on all sides with a heavy bar, so that it stands out without color.
const LOOKS: Record<CalloutTone, FrameLook> = {
  note: { bar: 1.5, color: 'gray', ground: 'tint', outline: 'none' },
  decision: { bar: 4, color: 'accent', ground: 'tint', outline: 'none' },
  caution: { bar: 6, color: 'ink', ground: 'paper', outline: 'ink' },
};

/** The pieces in a frame that follows them over a page break. */
export function framed(
  pieces: readonly Piece[],
  tone: CalloutTone,
  context: LayoutContext,
): readonly Piece[] {
  const strips = [
    piece(PAD_Y, () => undefined),
    ...pieces.map((one) => strip(one)),
    piece(PAD_Y, () => undefined),
  ];
  return strips.map((one, index) => {
    const ends = { top: index === 0, bottom: index === strips.length - 1 };
    const draw = (at: Point) => {
      context.tags.artifact('Layout', () =>
        ground({ ends, height: one.height, tone }, at, context),
      );
      one.draw({ x: at.x + FRAME_PAD, y: at.y });
    };
    return { ...one, draw };
  });
}

/** The space above a piece becomes part of it, so that the ground shows no gaps. */
function strip(one: Piece): Piece {
  const draw = (at: Point) => one.draw({ x: at.x, y: at.y + one.gap });
  return { ...one, height: one.height + one.gap, gap: 0, draw };
}

interface Strip {
  readonly ends: { readonly top: boolean; readonly bottom: boolean };
  readonly height: number;
  readonly tone: CalloutTone;
}

function ground({ ends, height, tone }: Strip, at: Point, { canvas, width }: LayoutContext): void {
  const look = LOOKS[tone];
  const bottom = at.y + height;
  canvas.fillBox({ x: at.x, y: at.y, width, height }, look.ground);
  canvas.fillBox({ x: at.x, y: at.y, width: look.bar, height }, look.color);
  if (look.outline === 'none') return;
  const right = at.x + width;
  const rule = { color: look.outline, width: 0.75 };
  canvas.drawRule({ x: right, y: at.y }, { x: right, y: bottom }, rule);
  if (ends.top) canvas.drawRule(at, { x: right, y: at.y }, rule);
  if (ends.bottom) canvas.drawRule({ x: at.x, y: bottom }, { x: right, y: bottom }, rule);
}
