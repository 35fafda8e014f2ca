import type { Inline, Run } from './inline.js';

/**
 * A section heading. It stays on the page of what follows it and becomes a bookmark.
 * The document's title ranks above level 1; levels may not be skipped going down.
 */
export interface Heading {
  readonly kind: 'heading';
  readonly level: HeadingLevel;
  readonly text: string;
}

export type HeadingLevel = 1 | 2 | 3;

/** A paragraph of running text. `lead` is the larger opening sentence of a document. */
export interface Paragraph {
  readonly kind: 'paragraph';
  readonly text: Inline;
  readonly size: 'body' | 'lead' | 'small';
}

/** A flat list. `checkbox` prints an empty box to tick by hand. */
export interface List {
  readonly kind: 'list';
  readonly marker: ListMarker;
  readonly items: readonly Inline[];
}

export type ListMarker = 'bullet' | 'number' | 'checkbox';

/** What follows starts on a new page. Two in a row, or one at the start, leave no empty page. */
export interface PageBreak {
  readonly kind: 'page-break';
}

export function heading(level: HeadingLevel, text: string): Heading {
  return { kind: 'heading', level, text };
}

/** A body paragraph: `paragraph('Due ', bold('June 30'), '.')`. */
export function paragraph(...parts: readonly (string | Run)[]): Paragraph {
  return { kind: 'paragraph', text: joined(parts), size: 'body' };
}

/** The larger opening sentence of a document. */
export function leadParagraph(...parts: readonly (string | Run)[]): Paragraph {
  return { kind: 'paragraph', text: joined(parts), size: 'lead' };
}

/** Sources, provenance and other small print; never smaller than 8.5 points. */
export function smallPrint(...parts: readonly (string | Run)[]): Paragraph {
  return { kind: 'paragraph', text: joined(parts), size: 'small' };
}

export function list(marker: ListMarker, items: readonly Inline[]): List {
  return { kind: 'list', marker, items };
}

export function pageBreak(): PageBreak {
  return { kind: 'page-break' };
}

function joined(parts: readonly (string | Run)[]): readonly Run[] {
  return parts.map((part) => (typeof part === 'string' ? { text: part } : part));
}
