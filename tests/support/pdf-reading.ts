/**
 * Reads PDF bytes back with libraries that share no code with the one that wrote them: text with
 * its place, outline and properties with pdfjs, the structure tree with pdf-lib.
 */
import { getDocument, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { PDFPageProxy } from 'pdfjs-dist';
import { rawPdf } from './pdf/raw-objects.js';
import { structTree } from './pdf/struct-tree.js';
import { markedTexts, withText } from './pdf/structure.js';
import type { StructureNode } from './pdf/structure.js';
import { textBoxes } from './pdf/text-boxes.js';
import type { TextBox } from './pdf/text-boxes.js';

export interface ReadPage {
  readonly width: number;
  readonly height: number;
  /** Every stretch of text with its box, in points from the top left corner. */
  readonly boxes: readonly TextBox[];
  /** The alternate texts that pdfjs finds in the page's structure. */
  readonly alts: readonly string[];
}

export interface Bookmark {
  readonly title: string;
  readonly items: readonly Bookmark[];
}

export interface ReadPdf {
  readonly pages: readonly ReadPage[];
  /** The top of the structure tree, with the text of each element. */
  readonly structure: readonly StructureNode[];
  readonly outline: readonly Bookmark[];
  readonly info: Readonly<Record<string, unknown>>;
  /** The XMP properties as XML. */
  readonly xmp: string;
}

/** Reads a whole file. */
export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const task = getDocument({ data: bytes.slice(), verbosity: VerbosityLevel.ERRORS });
  const file = await task.promise;
  const pages: ReadPage[] = [];
  const texts = new Map<string, string>();
  for (let number = 1; number <= file.numPages; number += 1) {
    const page = await file.getPage(number);
    pages.push(await readPage(page));
    (await markedTexts(page)).forEach((text, id) => texts.set(id, text));
  }
  const { info, metadata } = await file.getMetadata();
  const outline = ((await file.getOutline()) ?? []) as readonly Bookmark[];
  const read = {
    pages,
    structure: structTree(await rawPdf(bytes)).map((element) => withText(element, texts)),
    outline,
    info: { ...info } as Record<string, unknown>,
    xmp: (metadata?.getRaw() as string | undefined) ?? '',
  };
  await task.destroy();
  return read;
}

/** All text of a page in drawing order, one line per stretch. */
export function pageText(page: ReadPage): string {
  return page.boxes.map((box) => box.text).join('\n');
}

/** The elements of a role in a tree, in reading order. */
export function elements(tree: StructureNode, role: string): readonly StructureNode[] {
  const below = tree.children.flatMap((child) => elements(child, role));
  return tree.role === role ? [tree, ...below] : below;
}

/** The text of an element and all below it. */
export function elementText(node: StructureNode): string {
  return [node.text, ...node.children.map(elementText)].join(' ').trim();
}

/** The elements of a role in the whole file, in reading order. */
export function allElements(pdf: ReadPdf, role: string): readonly StructureNode[] {
  return pdf.structure.flatMap((top) => elements(top, role));
}

async function readPage(page: PDFPageProxy): Promise<ReadPage> {
  const { width, height } = page.getViewport({ scale: 1 });
  const tree: unknown = await page.getStructTree();
  return {
    width,
    height,
    boxes: textBoxes(await page.getTextContent(), height),
    alts: [...JSON.stringify(tree).matchAll(/"alt":("(?:[^"\\]|\\.)*")/g)].map(
      ([, text]) => JSON.parse(text!) as string,
    ),
  };
}

export type { StructureNode, TextBox };
