import { useId, type ReactNode } from 'react';
import { useWidth } from '../../parts/use-width.js';
import { fitColumns } from '../columns.js';
import { Patterns } from '../patterns.js';
import { ValueAxis } from '../value-axis.js';
import { StackBars } from './stack-bars.js';
import { STACK_HEIGHT, stackScale, type StackRow, type StackSpec } from './stack-drawing.js';
import { StackLines } from './stack-lines.js';

interface StackFigureProps<Row extends StackRow> {
  readonly title: string;
  readonly description: string;
  /** What the axis counts. */
  readonly axis: string;
  readonly spec: StackSpec<Row>;
  readonly rows: readonly Row[];
}

/** Amounts by year, stacked, against lines; it scrolls in its own box where there is no room. */
export function StackFigure<Row extends StackRow>(props: StackFigureProps<Row>): ReactNode {
  const { title, description, axis, spec, rows } = props;
  const id = useId();
  const [box, room] = useWidth<HTMLDivElement>(800);
  const columns = fitColumns(rows.length, room, { least: 18, most: 64 });
  const scale = stackScale(spec, rows);
  const drawing = { spec, rows, columns, scale, id };
  return (
    <div className="figure-frame">
      <ValueAxis name={axis} scale={scale} height={STACK_HEIGHT} />
      <div className="figure-box" ref={box} role="region" aria-label={title} tabIndex={0}>
        <svg
          role="img"
          aria-labelledby={`${id}-title ${id}-description`}
          width={columns.total}
          height={STACK_HEIGHT}
        >
          <title id={`${id}-title`}>{title}</title>
          <desc id={`${id}-description`}>{description}</desc>
          <Patterns id={id} />
          {scale.ticks.map((tick) => (
            <path key={tick} className="grid-line" d={`M0 ${scale.y(tick)}H${columns.total}`} />
          ))}
          <StackBars {...drawing} />
          <StackLines {...drawing} />
          <path className="ink-line" d={`M0 ${scale.y(0)}H${columns.total}`} />
        </svg>
      </div>
    </div>
  );
}
