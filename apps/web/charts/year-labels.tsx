import type { ReactNode } from 'react';
import type { Columns } from './columns.js';
import { labelEvery } from './ticks.js';

const LABEL_WIDTH = 42;

interface YearLabelsProps {
  readonly rows: readonly { readonly label: string; readonly year: string }[];
  readonly columns: Columns;
  /** Baseline of the labels, in pixels from the top. */
  readonly y: number;
}

/** The years under a figure, as many as have room. */
export function YearLabels({ rows, columns, y }: YearLabelsProps): ReactNode {
  const every = labelEvery(columns.width, LABEL_WIDTH);
  return rows.map(
    (row, index) =>
      index % every === 0 && (
        <text
          key={row.label}
          className="figure-label"
          x={every === 1 ? columns.middle(index) : columns.left(index) + 1}
          y={y}
          textAnchor={every === 1 ? 'middle' : 'start'}
        >
          {row.year}
        </text>
      ),
  );
}
