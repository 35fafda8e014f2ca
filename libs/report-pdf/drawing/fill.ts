import type { Hatch, Point } from '#report/document/drawing.js';
import { COLORS } from '../page/colors.js';
import type { Box } from '../page/canvas.js';
import type { Segment } from './hatch-lines.js';
import { hatchDots, hatchLines } from './hatch-lines.js';

const GRAYS = { light: '#e4e1db', medium: '#aeaaa2', dark: '#5d5a54' } as const;
const SPACING = 3.6;
const LINE_WIDTH = 0.55;
const DOT = 0.6;

/** Fills a closed ring with a hatch, which hides what is below; `none` hides nothing. */
export function fillRing(pdf: PDFKit.PDFDocument, ring: readonly Point[], hatch: Hatch): void {
  if (hatch === 'none') return;
  if (hatch === 'light' || hatch === 'medium' || hatch === 'dark') {
    tracePath(pdf, ring);
    pdf.fill(GRAYS[hatch]);
    return;
  }
  tracePath(pdf, ring);
  pdf.fill(COLORS.paper);
  pdf.save();
  tracePath(pdf, ring);
  pdf.clip();
  drawPattern(pdf, boundsOf(ring), hatch);
  pdf.restore();
}

/** Adds a closed ring to the current path. */
export function tracePath(pdf: PDFKit.PDFDocument, ring: readonly Point[]): void {
  ring.forEach(({ x, y }, index) => (index === 0 ? pdf.moveTo(x, y) : pdf.lineTo(x, y)));
  pdf.closePath();
}

function drawPattern(pdf: PDFKit.PDFDocument, box: Box, hatch: 'diagonal' | 'cross' | 'dots') {
  if (hatch === 'dots') {
    hatchDots(box, SPACING).forEach(({ x, y }) => pdf.circle(x, y, DOT));
    pdf.fill(COLORS.ink);
    return;
  }
  const falling = hatch === 'cross' ? hatchLines(box, SPACING, 'falling') : [];
  strokeAll(pdf, [...hatchLines(box, SPACING, 'rising'), ...falling]);
}

function strokeAll(pdf: PDFKit.PDFDocument, segments: readonly Segment[]): void {
  if (segments.length === 0) return;
  pdf.undash().lineWidth(LINE_WIDTH);
  segments.forEach(([from, to]) => pdf.moveTo(from.x, from.y).lineTo(to.x, to.y));
  pdf.stroke(COLORS.ink);
}

function boundsOf(ring: readonly Point[]): Box {
  const xs = ring.map((point) => point.x);
  const ys = ring.map((point) => point.y);
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}
