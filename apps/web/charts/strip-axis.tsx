import type { ReactNode } from 'react';
import { strings } from '../strings.data.js';
import type { StripDrawing } from './strip-drawing.js';
import type { StripYear } from './strip-years.js';
import { labelEvery } from './ticks.js';

const LABEL_WIDTH = 42;

/** The line on which the sites stand, broken where the promise is missed, and the years under it. */
export function StripAxis({ years, columns, layout }: StripDrawing): ReactNode {
  const every = labelEvery(columns.width, LABEL_WIDTH);
  return (
    <g>
      {years.map(({ row }, index) => (
        <g key={row.year}>
          <BaseLine
            left={columns.left(index)}
            width={columns.width}
            y={layout.baseline}
            gap={gapAt(years, index)}
          />
          {index % every === 0 && (
            <text
              className="figure-label"
              x={every === 1 ? columns.middle(index) : columns.left(index) + 1}
              y={layout.yearLabel}
              textAnchor={every === 1 ? 'middle' : 'start'}
            >
              {row.year}
            </text>
          )}
        </g>
      ))}
    </g>
  );
}

interface BaseLineProps {
  readonly left: number;
  readonly width: number;
  readonly y: number;
  readonly gap: Gap | null;
}

/** Which ends of a run of missed years a column holds. */
interface Gap {
  readonly opens: boolean;
  readonly closes: boolean;
}

function gapAt(years: readonly StripYear[], index: number): Gap | null {
  const isMissed = (at: number): boolean => years[at]?.row.promiseKept === false;
  if (!isMissed(index)) return null;
  return { opens: !isMissed(index - 1), closes: !isMissed(index + 1) };
}

function BaseLine({ left, width, y, gap }: BaseLineProps): ReactNode {
  if (gap === null) return <path className="ink-line" d={`M${left} ${y}h${width}`} />;
  const inset = 3;
  const hook = 8;
  const opening = gap.opens ? `M${left} ${y}h${inset}v${-hook}` : '';
  const closing = gap.closes ? `M${left + width} ${y}h${-inset}v${-hook}` : '';
  return <path className="accent-line" d={opening + closing} />;
}

/** A line through every band at the first year in which anything falls short. */
export function StripLimitLine(props: StripDrawing & { readonly year: string | null }): ReactNode {
  const { years, columns, layout, year } = props;
  const index = years.findIndex(({ row }) => row.year === year);
  if (year === null || index < 0) return null;
  const x = columns.left(index);
  const anchor = x > columns.total / 2 ? 'end' : 'start';
  return (
    <g>
      <path className="accent-line limit-line" d={`M${x} 4V${layout.hiresTop - 8}`} />
      <text
        className="figure-label accent-label"
        x={x + (anchor === 'end' ? -5 : 5)}
        y={13}
        textAnchor={anchor}
      >
        {strings.strip.firstLimit(year)}
      </text>
    </g>
  );
}
