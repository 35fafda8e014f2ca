/** The objects of a PDF file as they are written, read with pdf-lib. */
import { PDFArray, PDFDict, PDFDocument, PDFName, PDFRawStream, decodePDFRawStream } from 'pdf-lib';
import type { PDFObject, PDFRef } from 'pdf-lib';

export interface RawPdf {
  readonly file: PDFDocument;
  readonly catalog: PDFDict;
  /** Every dictionary in the file that is an object of its own, streams' included. */
  readonly dictionaries: readonly PDFDict[];
}

export async function rawPdf(bytes: Uint8Array): Promise<RawPdf> {
  const file = await PDFDocument.load(bytes, { updateMetadata: false });
  const dictionaries = file.context.enumerateIndirectObjects().flatMap(([, object]) => {
    if (object instanceof PDFDict) return [object];
    return object instanceof PDFRawStream ? [object.dict] : [];
  });
  return { file, catalog: file.catalog, dictionaries };
}

/** Dictionaries whose `key` has the name `value`, such as all with `Type` `Font`. */
export function withName({ dictionaries }: RawPdf, key: string, value: string) {
  return dictionaries.filter((one) => one.lookup(PDFName.of(key)) === PDFName.of(value));
}

/** An entry as text, `undefined` where there is none. */
export function entry(dictionary: PDFDict, key: string): string | undefined {
  return dictionary.lookup(PDFName.of(key))?.toString();
}

/** An entry that is a dictionary, followed through its reference. */
export function dictionary(of: PDFDict, key: string): PDFDict | undefined {
  const found = of.lookup(PDFName.of(key));
  return found instanceof PDFDict ? found : undefined;
}

/** The members of an entry that is an array, followed through their references. */
export function members(of: PDFDict, key: string): readonly PDFObject[] {
  const found = of.lookup(PDFName.of(key));
  return found instanceof PDFArray
    ? Array.from({ length: found.size() }, (_, index) => found.lookup(index)).flatMap(
        (one) => one ?? [],
      )
    : [];
}

/** The decoded text of a stream. */
export function streamText(raw: RawPdf, reference: PDFObject | PDFRef | undefined): string {
  const stream = raw.file.context.lookup(reference);
  if (!(stream instanceof PDFRawStream)) throw new Error('not a stream');
  return Buffer.from(decodePDFRawStream(stream).decode()).toString('latin1');
}
