interface Entry {
  readonly level: number;
  readonly title: string;
  readonly page: unknown;
  readonly top: number;
}

interface OutlineItem {
  readonly dictionary: unknown;
  readonly outlineData: Record<string, unknown>;
  readonly children: readonly OutlineItem[];
  addItem(title: string): OutlineItem;
}

/** Collects the headings as they are drawn and writes them as the file's outline. */
export class Bookmarks {
  private readonly entries: Entry[] = [];

  constructor(private readonly pdf: PDFKit.PDFDocument) {}

  /** Notes a heading at `y` (from the top) of the current page. */
  note(level: number, title: string, y: number): void {
    const { dictionary, height } = this.pdf.page as unknown as {
      readonly dictionary: unknown;
      readonly height: number;
    };
    this.entries.push({ level, title, page: dictionary, top: height - y });
  }

  /** Writes the outline; call once, when all pages are drawn. */
  write(): void {
    const root = this.pdf.outline as unknown as OutlineItem;
    const open: { level: number; item: OutlineItem }[] = [{ level: 0, item: root }];
    for (const entry of this.entries) {
      while ((open.at(-1)?.level ?? 0) >= entry.level) open.pop();
      const item = (open.at(-1)?.item ?? root).addItem(entry.title);
      item.outlineData['Dest'] = [entry.page, 'XYZ', null, entry.top, null];
      open.push({ level: entry.level, item });
    }
    countVisible(root);
  }
}

// pdfkit counts only the direct children of an open item; the count is of all that can be seen.
function countVisible(item: OutlineItem): number {
  const count = item.children.reduce((sum, child) => sum + 1 + countVisible(child), 0);
  if (count > 0) item.outlineData['Count'] = count;
  return count;
}
