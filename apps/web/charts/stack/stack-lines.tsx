import type { ReactNode } from 'react';
import { strings } from '../../strings.data.js';
import { YearLabels } from '../year-labels.js';
import {
  PLOT_BOTTOM,
  PLOT_TOP,
  type Line,
  type StackDrawing,
  type StackRow,
} from './stack-drawing.js';

/** Lines as steps over the bars, the years under them, and where the plan ends. */
export function StackLines<Row extends StackRow>(drawing: StackDrawing<Row>): ReactNode {
  const lines = [...drawing.spec.lines]
    .reverse()
    .map((line) => ({ line, path: steps(drawing, line) }));
  return (
    <g>
      {lines.map(({ line, path }) => (
        <path key={line.name} className="step-halo" d={path} />
      ))}
      {lines.map(({ line, path }) => (
        <path key={line.name} className={line.className} d={path} />
      ))}
      <YearLabels rows={drawing.rows} columns={drawing.columns} y={PLOT_BOTTOM + 17} />
      <HorizonLine {...drawing} />
    </g>
  );
}

function steps<Row extends StackRow>(
  { rows, columns, scale }: StackDrawing<Row>,
  line: Line<Row>,
): string {
  return rows
    .map((row, index) => {
      const y = scale.y(line.of(row)).toFixed(1);
      return `${index === 0 ? 'M0 ' : 'V'}${y}H${columns.left(index + 1).toFixed(1)}`;
    })
    .join('');
}

function HorizonLine<Row extends StackRow>({ rows, columns }: StackDrawing<Row>): ReactNode {
  const index = rows.findIndex(({ afterHorizon }) => afterHorizon === true);
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
