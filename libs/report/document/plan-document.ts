import type { Callout, Options, Signatures } from './boxes.js';
import type { Figure } from './figure.js';
import type { KeyFacts } from './key-facts.js';
import type { Table } from './table.js';
import type { Heading, List, PageBreak, Paragraph } from './text-blocks.js';

/**
 * A document as pure data: what it says and in which order, with no fonts, pages or positions.
 * The same value gives the same bytes, so every date is a field and nothing reads the clock.
 */
export interface PlanDocument {
  readonly title: string;
  /** One sentence for the title block and the file's properties. */
  readonly subject: string;
  /** Language tag of the text (BCP 47), such as `en-US`. */
  readonly language: string;
  /** Name of the landscape program. */
  readonly program: string;
  readonly planVersion: string;
  /** The date the data were taken, as printed. */
  readonly dataDate: string;
  readonly status: 'draft' | 'approved';
  /** Name of the person who approved it, printed with the status. Left out: not given. */
  readonly approvedBy?: string;
  /** One sentence on how far the plan is proven, printed on every page. */
  readonly solveNote: string;
  readonly paper: 'letter' | 'a4';
  /** ISO 8601 date or date and time in UTC, such as `2026-02-14` or `2026-02-14T09:30:00Z`. */
  readonly createdAt: string;
  readonly blocks: readonly Block[];
}

export type Block =
  | Heading
  | Paragraph
  | List
  | KeyFacts
  | Table
  | Figure
  | Callout
  | Options
  | Signatures
  | PageBreak;
