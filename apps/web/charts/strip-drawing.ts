import type { Columns } from './columns.js';
import type { StripLayout } from './strip-layout.js';
import type { StripYear } from './strip-years.js';

/** What every part of the strip draws from. */
export interface StripDrawing {
  readonly years: readonly StripYear[];
  readonly columns: Columns;
  readonly layout: StripLayout;
  /** Prefix of the hatches' ids. */
  readonly id: string;
}
