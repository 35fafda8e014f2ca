import type { Point } from '#report/document/drawing.js';
import { COLORS } from './colors.js';
import type { ColorName } from './colors.js';
import type { PdfFile } from './pdf-file.js';
import { fontFile } from '../text/font-files.js';
import { printable } from '../text/printable.js';
import type { TextLine } from '../text/break-lines.js';
import { breakLines } from '../text/break-lines.js';
import type { StyledText } from '../text/styled-text.js';
import type { TypeStyle } from '../text/type-styles.js';
import type { Measure } from '../text/units.js';

/** How a straight rule looks. */
export interface Rule {
  readonly color: ColorName;
  readonly width: number;
}

/** A rectangle on the page, in points from its top left corner. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Measures, breaks and draws text and rules on the current page of a file. */
export class Canvas {
  private readonly widths = new Map<string, number>();

  constructor(readonly file: PdfFile) {}

  /** Width of text in points, remembered per word and style. */
  readonly measure: Measure = (text, style) => {
    const key = `${style.family} ${style.face} ${style.size} ${text}`;
    const known = this.widths.get(key);
    if (known !== undefined) return known;
    this.select(style);
    const width = this.file.pdf.widthOfString(text);
    this.widths.set(key, width);
    return width;
  };

  /** Breaks text into lines, in the letters that its fonts can show. */
  lines(runs: readonly StyledText[], width: number): readonly TextLine[] {
    return breakLines(
      runs.map((run) => ({ ...run, text: this.shown(run) })),
      width,
      this.measure,
    );
  }

  /** Draws one line with its left end at a point on the baseline. */
  drawLine(line: TextLine, at: Point): void {
    let x = at.x;
    for (const part of line.parts) {
      this.drawText(part, { x, y: at.y });
      x += this.measure(part.text, part.style);
    }
  }

  /** Draws text that is known to be printable, from a point on the baseline. */
  drawText({ text, style }: StyledText, at: Point, options: { readonly rotation?: number } = {}) {
    this.select(style);
    this.file.pdf
      .fillColor(COLORS[style.color])
      .text(text, at.x, at.y, { lineBreak: false, baseline: 'alphabetic', ...options });
  }

  drawRule(from: Point, to: Point, rule: Rule): void {
    this.file.pdf
      .undash()
      .lineWidth(rule.width)
      .moveTo(from.x, from.y)
      .lineTo(to.x, to.y)
      .stroke(COLORS[rule.color]);
  }

  fillBox({ x, y, width, height }: Box, color: ColorName): void {
    this.file.pdf.rect(x, y, width, height).fill(COLORS[color]);
  }

  strokeBox({ x, y, width, height }: Box, rule: Rule): void {
    this.file.pdf.undash().lineWidth(rule.width).rect(x, y, width, height);
    this.file.pdf.stroke(COLORS[rule.color]);
  }

  /** The text in letters that the font of its style can show. */
  shown({ text, style }: StyledText): string {
    this.select(style);
    return printable(text, this.file.hasGlyph);
  }

  private select(style: TypeStyle): void {
    this.file.pdf.font(fontFile(style.family, style.face)).fontSize(style.size);
  }
}
