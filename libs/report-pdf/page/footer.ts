import type { PlanDocument } from '#report/document/plan-document.js';
import { baseline } from '../blocks/text-pieces.js';
import type { TextLine } from '../text/break-lines.js';
import { TYPE } from '../text/type-styles.js';
import type { TagTree } from '../tags/tag-tree.js';
import type { Canvas } from './canvas.js';
import type { PageGeometry } from './page-geometry.js';
import { MEASURE } from './page-geometry.js';
import { statusWords } from './status-words.js';

const STYLE = TYPE.footer;
const PAGE_NUMBER_WIDTH = 78;

/** The running footer: the same lines on every page, and a page number beside the first. */
export interface Footer {
  readonly height: number;
  readonly lines: readonly TextLine[];
}

/** Sets the footer's lines; as many as the names and the note need. */
export function footerFor(document: PlanDocument, canvas: Canvas): Footer {
  const { program, planVersion, dataDate, solveNote } = document;
  const facts = [program, `Plan ${planVersion}`, `Data as of ${dataDate}`, statusWords(document)];
  const lines = [facts.join('  ·  '), solveNote]
    .filter((text) => text !== '')
    .flatMap((text) => canvas.lines([{ text, style: STYLE }], MEASURE - PAGE_NUMBER_WIDTH));
  return { height: lines.length * STYLE.leading, lines };
}

export interface FooterPlace {
  readonly geometry: PageGeometry;
  readonly page: number;
  readonly pages: number;
}

/** Draws the footer on the current page as running matter, outside the reading order. */
export function drawFooter(
  footer: Footer,
  place: FooterPlace,
  { canvas, tags }: { readonly canvas: Canvas; readonly tags: TagTree },
): void {
  const { left, contentWidth, footerTop } = place.geometry;
  const right = left + contentWidth;
  const first = footerTop + baseline(STYLE);
  const number = `Page ${place.page} of ${place.pages}`;
  tags.artifact('Pagination', () => {
    const rule = { color: 'faint', width: 0.5 } as const;
    canvas.drawRule({ x: left, y: footerTop - 5 }, { x: right, y: footerTop - 5 }, rule);
    footer.lines.forEach((line, index) =>
      canvas.drawLine(line, { x: left, y: first + index * STYLE.leading }),
    );
    const start = right - canvas.measure(number, STYLE);
    canvas.drawText({ text: number, style: STYLE }, { x: start, y: first });
  });
}
