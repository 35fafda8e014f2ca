/** The whole structure tree as it is written, read with pdf-lib. */
import { PDFArray, PDFDict, PDFHexString, PDFName, PDFNumber, PDFRef, PDFString } from 'pdf-lib';
import type { PDFObject } from 'pdf-lib';
import { dictionary } from './raw-objects.js';
import type { RawPdf } from './raw-objects.js';

/** A structure element. `content` names its marked content as pdfjs names it. */
export interface TreeElement {
  readonly role: string;
  readonly alt: string | undefined;
  /** Attributes as written, such as `/Scope` to `/Column`. */
  readonly attributes: ReadonlyMap<string, string>;
  readonly content: readonly string[];
  readonly children: readonly TreeElement[];
}

/** The elements below the structure tree's root. */
export function structTree(raw: RawPdf): readonly TreeElement[] {
  const root = dictionary(raw.catalog, 'StructTreeRoot');
  return root ? kids(root).flatMap((kid) => (isElement(kid) ? [element(kid)] : [])) : [];
}

/** One element and all below it. */
export function element(of: PDFDict): TreeElement {
  const page = of.get(PDFName.of('Pg'));
  const all = kids(of);
  return {
    role: name(of.lookup(PDFName.of('S'))),
    alt: text(of.lookup(PDFName.of('Alt'))),
    attributes: attributes(of),
    content: all.flatMap((kid) => contentName(kid, page)),
    children: all.filter(isElement).map(element),
  };
}

function kids(of: PDFDict): readonly PDFObject[] {
  const found = of.lookup(PDFName.of('K'));
  if (found === undefined) return [];
  if (!(found instanceof PDFArray)) return [found];
  return Array.from({ length: found.size() }, (_, index) => found.lookup(index)).flatMap(
    (one) => one ?? [],
  );
}

function isElement(kid: PDFObject): kid is PDFDict {
  return kid instanceof PDFDict && kid.has(PDFName.of('S'));
}

function contentName(kid: PDFObject, page: PDFObject | undefined): readonly string[] {
  if (kid instanceof PDFNumber && page instanceof PDFRef) {
    return [`p${page.objectNumber}R_mc${kid.asNumber()}`];
  }
  if (!(kid instanceof PDFDict) || !kid.has(PDFName.of('MCID'))) return [];
  return contentName(kid.lookup(PDFName.of('MCID')) as PDFNumber, kid.get(PDFName.of('Pg')));
}

function attributes(of: PDFDict): ReadonlyMap<string, string> {
  const entries = dictionary(of, 'A')?.entries() ?? [];
  return new Map(entries.map(([key, value]) => [name(key), value.toString()]));
}

function name(object: PDFObject | undefined): string {
  return object?.toString().replace(/^\//, '') ?? '';
}

function text(object: PDFObject | undefined): string | undefined {
  const words = object instanceof PDFString || object instanceof PDFHexString;
  return words ? object.decodeText() : undefined;
}
