import type { ReactNode } from 'react';
import { strings } from '../strings.data.js';
import { PLOT_BOTTOM, PLOT_TOP, type CareDrawing } from './care-drawing.js';
import type { CareRow } from './care-rows.js';
import { labelEvery } from './ticks.js';

const LABEL_WIDTH = 42;

/** The hours of the people there as steps, the years under the bars, and where the plan ends. */
export function CareLines(drawing: CareDrawing): ReactNode {
  const now = steps(drawing, (row) => row.supplyNow);
  const proposed = steps(drawing, (row) => row.supplyProposed);
  return (
    <g>
      <path className="supply-halo" d={proposed} />
      <path className="supply-halo" d={now} />
      <path className="supply-proposed" d={proposed} />
      <path className="supply-now" d={now} />
      <YearLabels {...drawing} />
      <HorizonLine {...drawing} />
    </g>
  );
}

function steps({ rows, columns, scale }: CareDrawing, of: (row: CareRow) => number): string {
  return rows
    .map((row, index) => {
      const y = scale.y(of(row)).toFixed(1);
      return `${index === 0 ? 'M0 ' : 'V'}${y}H${columns.left(index + 1).toFixed(1)}`;
    })
    .join('');
}

function YearLabels({ rows, columns }: CareDrawing): ReactNode {
  const every = labelEvery(columns.width, LABEL_WIDTH);
  return rows.map(
    (row, index) =>
      index % every === 0 && (
        <text
          key={row.label}
          className="figure-label"
          x={every === 1 ? columns.middle(index) : columns.left(index) + 1}
          y={PLOT_BOTTOM + 17}
          textAnchor={every === 1 ? 'middle' : 'start'}
        >
          {row.year}
        </text>
      ),
  );
}

function HorizonLine({ rows, columns }: CareDrawing): ReactNode {
  const index = rows.findIndex(({ afterHorizon }) => afterHorizon);
  if (index <= 0) return null;
  const x = columns.left(index);
  return (
    <g>
      <path className="horizon-line" d={`M${x} ${PLOT_TOP - 20}V${PLOT_BOTTOM}`} />
      <text className="figure-label" x={x + 5} y={PLOT_TOP - 11}>
        {strings.care.afterHorizon}
      </text>
    </g>
  );
}
