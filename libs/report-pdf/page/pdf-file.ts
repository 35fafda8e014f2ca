import { createHash } from 'node:crypto';
import PDFDocument from 'pdfkit';
import type { PlanDocument } from '#report/document/plan-document.js';
import { fontFile } from '../text/font-files.js';
import { metadataXml, PRODUCT } from './metadata.js';

/** An open PDF with what pdfkit offers but does not declare. */
export interface PdfFile {
  readonly pdf: PDFKit.PDFDocument;
  /** Whether the current font has a shape for a code point. */
  readonly hasGlyph: (codePoint: number) => boolean;
  /** The bytes, once everything is drawn. */
  finish(): Promise<Uint8Array>;
}

interface Undeclared {
  _id: Uint8Array;
  _addInfo(): void;
  readonly _font: FontInUse;
  readonly _fontFamilies: Readonly<Record<string, FontInUse>>;
}

interface FontInUse {
  readonly font: { hasGlyphForCodePoint(codePoint: number): boolean };
  readonly unicode: number[][];
}

/**
 * Opens a tagged PDF 1.7 for a document. Date and file identifier come from the document, and the
 * metadata are written here, because pdfkit leaves `&` and `<` in them as they are.
 */
export function openPdfFile(document: PlanDocument): PdfFile {
  const pdf = new PDFDocument(fileOptions(document));
  const inside = pdf as unknown as Undeclared;
  inside._id = createHash('md5').update(JSON.stringify(document)).digest();
  inside._addInfo = () => pdf.appendXML(metadataXml(document));
  return {
    pdf,
    hasGlyph: (codePoint) => inside._font.font.hasGlyphForCodePoint(codePoint),
    finish: () => {
      Object.values(inside._fontFamilies).forEach(mapMissingGlyph);
      return collected(pdf);
    },
  };
}

function fileOptions(document: PlanDocument): PDFKit.PDFDocumentOptions {
  return {
    pdfVersion: '1.7',
    tagged: true,
    displayTitle: true,
    lang: document.language,
    bufferPages: true,
    autoFirstPage: false,
    font: fontFile('serif', 'regular'),
    info: {
      Title: document.title,
      Subject: document.subject,
      Author: document.program,
      Creator: PRODUCT,
      Producer: PRODUCT,
      CreationDate: new Date(document.createdAt),
    },
  };
}

// pdfkit maps the glyph for missing characters to U+0000, which PDF/UA-1 forbids (7.21.7).
// The glyph is never drawn.
function mapMissingGlyph(font: FontInUse): void {
  font.unicode[0] = [' '.charCodeAt(0)];
}

function collected(pdf: PDFKit.PDFDocument): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    pdf.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    pdf.on('end', () => resolve(new Uint8Array(Buffer.concat(chunks))));
    pdf.on('error', reject);
    pdf.end();
  });
}
