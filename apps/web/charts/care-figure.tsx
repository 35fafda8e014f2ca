import { useId, type ReactNode } from 'react';
import { useWidth } from '../parts/use-width.js';
import { wholeNumber } from '../format/numbers.js';
import { strings } from '../strings.data.js';
import { CareBars } from './care-bars.js';
import { careScale, CARE_HEIGHT, PLOT_BOTTOM } from './care-drawing.js';
import { CareLines } from './care-lines.js';
import type { CareRow } from './care-rows.js';
import { fitColumns } from './columns.js';
import { Patterns } from './patterns.js';

interface CareFigureProps {
  readonly name: string;
  readonly rows: readonly CareRow[];
  /** When the hours first fall short, in words; `null` if they never do. */
  readonly shortIn: string | null;
}

/** Hours wanted, stacked by age of site, against the hours of the people there. */
export function CareFigure({ name, rows, shortIn }: CareFigureProps): ReactNode {
  const id = useId();
  const [box, room] = useWidth<HTMLDivElement>(800);
  const columns = fitColumns(rows.length, room, { least: 18, most: 64 });
  const scale = careScale(rows);
  const title = strings.care.title(name);
  return (
    <div className="figure-frame">
      <svg className="figure-scale" width={58} height={CARE_HEIGHT} aria-hidden="true">
        <text className="figure-label" x={50} y={12} textAnchor="end">
          {strings.care.axis}
        </text>
        {scale.ticks.map((tick) => (
          <text key={tick} className="figure-label" x={50} y={scale.y(tick) + 4} textAnchor="end">
            {wholeNumber(tick)}
          </text>
        ))}
      </svg>
      <div className="figure-box" ref={box} role="region" aria-label={title} tabIndex={0}>
        <svg
          role="img"
          aria-labelledby={`${id}-title ${id}-description`}
          width={columns.total}
          height={CARE_HEIGHT}
        >
          <title id={`${id}-title`}>{title}</title>
          <desc id={`${id}-description`}>{description(rows, shortIn)}</desc>
          <Patterns id={id} />
          {scale.ticks.map((tick) => (
            <path key={tick} className="grid-line" d={`M0 ${scale.y(tick)}H${columns.total}`} />
          ))}
          <CareBars rows={rows} columns={columns} scale={scale} id={id} />
          <CareLines rows={rows} columns={columns} scale={scale} id={id} />
          <path className="ink-line" d={`M0 ${PLOT_BOTTOM}H${columns.total}`} />
        </svg>
      </div>
    </div>
  );
}

function description(rows: readonly CareRow[], shortIn: string | null): string {
  const first = rows[0]?.label ?? '';
  const last = rows.at(-1)?.label ?? '';
  return strings.care.description(first, last, shortIn);
}
