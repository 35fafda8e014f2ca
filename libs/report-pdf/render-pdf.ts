import { documentProblems } from '#report/document/document-problems.js';
import type { PlanDocument } from '#report/document/plan-document.js';
import { layoutBlocks } from './blocks/layout-block.js';
import type { LayoutContext } from './blocks/layout-context.js';
import { titlePieces } from './blocks/title-block.js';
import { Canvas } from './page/canvas.js';
import { drawFooter, footerFor } from './page/footer.js';
import type { PageGeometry } from './page/page-geometry.js';
import { pageGeometry } from './page/page-geometry.js';
import { openPdfFile } from './page/pdf-file.js';
import { fitPages } from './pieces/fit-pages.js';
import type { Piece } from './pieces/piece.js';
import { Bookmarks } from './tags/bookmarks.js';
import { TagTree } from './tags/tag-tree.js';

/**
 * A document as a tagged PDF 1.7 file written to PDF/UA-1. The same document gives the same
 * bytes. Throws when `documentProblems` finds something, with all of it in the message.
 */
export async function renderPdf(document: PlanDocument): Promise<Uint8Array> {
  const problems = documentProblems(document);
  if (problems.length > 0) throw new RangeError(problems.join('; '));
  const file = openPdfFile(document);
  const canvas = new Canvas(file);
  const tags = new TagTree(file.pdf);
  const bookmarks = new Bookmarks(file.pdf);
  const footer = footerFor(document, canvas);
  const geometry = pageGeometry(document.paper, footer.height);
  const context: LayoutContext = {
    canvas,
    tags,
    bookmarks,
    width: geometry.contentWidth,
    pageHeight: geometry.contentHeight,
    parent: tags.root,
  };
  const pieces = [...titlePieces(document, context), ...layoutBlocks(document.blocks, context)];
  const pages = drawPieces(pieces, geometry, file.pdf);
  for (let page = 1; page <= pages; page += 1) {
    file.pdf.switchToPage(page - 1);
    drawFooter(footer, { geometry, page, pages }, { canvas, tags });
  }
  bookmarks.write();
  return file.finish();
}

/** Draws the pieces page by page; answers the number of pages. */
function drawPieces(
  pieces: readonly Piece[],
  { width, height, left, top, contentHeight }: PageGeometry,
  pdf: PDFKit.PDFDocument,
): number {
  let pages = 0;
  for (const { piece, page, y, repeats } of fitPages(pieces, contentHeight)) {
    if (page === pages) {
      pdf.addPage({ size: [width, height], margin: 0 });
      pages += 1;
    }
    if (repeats === 'yes') piece.repeated?.draw({ x: left, y: top });
    piece.draw({ x: left, y: top + y });
  }
  return pages;
}
