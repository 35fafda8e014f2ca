import { expect } from 'vitest';
import type { ReadPdf } from '../pdf-reading.js';
import { overlaps } from './text-boxes.js';

/** No text beyond the margins of 72 points beside (letter), 56 above and 28 below; none on other text. */
export function expectTidy(pdf: ReadPdf, side = 72): void {
  for (const page of pdf.pages) {
    for (const box of page.boxes) {
      expect(box.left, box.text).toBeGreaterThanOrEqual(side - 0.1);
      expect(box.right, box.text).toBeLessThanOrEqual(page.width - side + 0.1);
      expect(box.top, box.text).toBeGreaterThanOrEqual(56);
      expect(box.bottom, box.text).toBeLessThanOrEqual(page.height - 28);
    }
    expect(overlaps(page.boxes)).toEqual([]);
  }
}
