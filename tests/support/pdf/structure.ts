import type { PDFPageProxy } from 'pdfjs-dist';
import type { TreeElement } from './struct-tree.js';

/** A structure element with the text marked as its own content. */
export interface StructureNode {
  readonly role: string;
  readonly alt: string | undefined;
  readonly text: string;
  readonly children: readonly StructureNode[];
}

/** An element and all below it, with their text. */
export function withText(element: TreeElement, texts: ReadonlyMap<string, string>): StructureNode {
  return {
    role: element.role,
    alt: element.alt,
    text: element.content
      .map((name) => texts.get(name) ?? '')
      .join('')
      .trim(),
    children: element.children.map((child) => withText(child, texts)),
  };
}

/**
 * The text inside each piece of tagged content of a page. Lines are joined by a space, because
 * the space at the end of a line is not told apart from the end itself.
 */
export async function markedTexts(page: PDFPageProxy): Promise<ReadonlyMap<string, string>> {
  const { items } = await page.getTextContent({ includeMarkedContent: true });
  const texts = new Map<string, string>();
  const open: (string | undefined)[] = [];
  for (const item of items) {
    if ('str' in item) {
      const id = open.findLast((one) => one !== undefined);
      const words = item.hasEOL ? `${item.str} ` : item.str;
      if (id !== undefined) texts.set(id, (texts.get(id) ?? '') + words);
    } else if (item.type === 'endMarkedContent') open.pop();
    else open.push(item.id ?? undefined);
  }
  return texts;
}
