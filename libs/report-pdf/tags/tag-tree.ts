/** An element of the structure tree, as pdfkit holds it. */
export type Tag = PDFKit.PDFStructureElement;

/** Attributes of a structure element, written as pdfkit writes dictionaries. */
export type TagAttributes = Readonly<Record<string, unknown>>;

export interface TagOptions {
  /** Words in place of a drawing. */
  readonly alt?: string;
  readonly attributes?: TagAttributes;
}

/** Builds the structure tree in reading order and marks what is drawn as content or artifact. */
export class TagTree {
  readonly root: Tag;

  constructor(private readonly pdf: PDFKit.PDFDocument) {
    this.root = pdf.struct('Document');
    pdf.addStructure(this.root);
  }

  /** Appends an element; reading order is the order of these calls. */
  add(parent: Tag, type: string, options: TagOptions = {}): Tag {
    const tag = this.pdf.struct(type, options.alt === undefined ? {} : { alt: options.alt });
    if (options.attributes) setAttributes(tag, options.attributes);
    parent.add(tag);
    return tag;
  }

  /** Marks what `draw` draws on the current page as content of an element. */
  content(tag: Tag, draw: () => void): void {
    const { S: type } = dataOf(tag);
    const content = this.pdf.markStructureContent(String(type));
    tag.add(content);
    draw();
    this.pdf.endMarkedContent();
  }

  /** Marks what `draw` draws as decoration (`Layout`) or running matter (`Pagination`). */
  artifact(type: 'Layout' | 'Pagination', draw: () => void): void {
    this.pdf.markContent('Artifact', { type });
    draw();
    this.pdf.endMarkedContent();
  }
}

/** Sets the attribute dictionary of an element that is still open. */
export function setAttributes(tag: Tag, attributes: TagAttributes): void {
  dataOf(tag)['A'] = attributes;
}

function dataOf(tag: Tag): Record<string, unknown> {
  return (tag as unknown as { dictionary: { data: Record<string, unknown> } }).dictionary.data;
}
