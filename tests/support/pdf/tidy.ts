import { expect } from 'vitest';
import type { ReadPdf } from '../pdf-reading.js';
import { overlaps, type TextBox } from './text-boxes.js';

/** No text beyond the margins of 72 points beside (letter), 56 above and 28 below; none on other text. */
export function expectTidy(pdf: ReadPdf, side = 72): void {
  for (const page of pdf.pages) {
    const inside = ({ left, right, top, bottom }: TextBox) =>
      left >= side - 0.1 &&
      right <= page.width - side + 0.1 &&
      top >= 56 &&
      bottom <= page.height - 28;
    expect(page.boxes.filter((box) => !inside(box))).toEqual([]);
    expect(overlaps(page.boxes)).toEqual([]);
  }
}
