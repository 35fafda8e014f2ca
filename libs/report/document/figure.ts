import type { Drawing } from './drawing.js';
import type { Table } from './table.js';

/**
 * A drawing with its title, words for those who cannot see it, and its data as a table, which is
 * printed right after it.
 */
export interface Figure {
  readonly kind: 'figure';
  readonly title: string;
  /** What the drawing shows and what follows from it, in one to four sentences. */
  readonly alt: string;
  readonly drawing: Drawing;
  readonly table: Table;
}
