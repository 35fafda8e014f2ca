import { expect, test } from 'vitest';
import { Canvas } from '#report-pdf/page/canvas.js';
import { openPdfFile } from '#report-pdf/page/pdf-file.js';
import { TYPE } from '#report-pdf/text/type-styles.js';
import { documentOf } from '../../support/sample-document.js';

const faces = (['serif', 'sans'] as const).flatMap((family) =>
  (['regular', 'bold', 'italic', 'bold-italic'] as const).map((face) => [family, face] as const),
);

test.each(faces)('all digits of %s %s are equally wide to a thousandth', (family, face) => {
  const canvas = new Canvas(openPdfFile(documentOf([])));
  const style = { ...TYPE.body, family, face, size: 1000 };
  const widths = [...'0123456789'].map((digit) => canvas.measure(digit, style));
  expect(Math.max(...widths) - Math.min(...widths)).toBeLessThanOrEqual(1);
  expect(Math.min(...widths)).toBeGreaterThan(400);
});

test('letters are not all equally wide, so the measure does tell', () => {
  const canvas = new Canvas(openPdfFile(documentOf([])));
  expect(canvas.measure('W', TYPE.body)).toBeGreaterThan(2 * canvas.measure('i', TYPE.body));
});
