import type { TextContent, TextItem } from 'pdfjs-dist/types/src/display/api.js';

/** A stretch of text; `turn` is how its lines run. The box is around the letters. */
export interface TextBox {
  readonly text: string;
  readonly turn: 'level' | 'up';
  readonly size: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

// Height of capitals above and of descenders below the baseline, as parts of the type size.
const ABOVE = 0.68;
const BELOW = 0.2;

/** The boxes of all stretches that are more than a space. */
export function textBoxes(content: TextContent, pageHeight: number): readonly TextBox[] {
  return content.items
    .filter((item): item is TextItem => 'str' in item && item.str.trim() !== '')
    .map((item) => boxOf(item, pageHeight));
}

function boxOf({ str, width, transform }: TextItem, pageHeight: number): TextBox {
  const [a, b, , , x, up] = transform as [number, number, number, number, number, number];
  const size = Math.hypot(a, b);
  const y = pageHeight - up;
  const common = { text: str, size };
  if (Math.abs(b) > Math.abs(a)) {
    const [left, right] = [x - ABOVE * size, x + BELOW * size];
    return { ...common, turn: 'up', left, right, top: y - width, bottom: y };
  }
  const [top, bottom] = [y - ABOVE * size, y + BELOW * size];
  return { ...common, turn: 'level', left: x, right: x + width, top, bottom };
}

/** Pairs of boxes that cover each other by more than half a point both ways. */
export function overlaps(boxes: readonly TextBox[]): readonly (readonly [string, string])[] {
  return boxes.flatMap((a, index) =>
    boxes
      .slice(index + 1)
      .filter((b) => across(a, b) > 0.5 && down(a, b) > 0.5)
      .map((b) => [a.text, b.text] as const),
  );
}

function across(a: TextBox, b: TextBox): number {
  return Math.min(a.right, b.right) - Math.max(a.left, b.left);
}

function down(a: TextBox, b: TextBox): number {
  return Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
}
