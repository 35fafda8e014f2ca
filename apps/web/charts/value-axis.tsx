import type { ReactNode } from 'react';
import { wholeNumber } from '../format/numbers.js';

export interface ValueScale {
  readonly ticks: readonly number[];
  /** Height on the page, in pixels from the top, of a value; below the axis for a negative one. */
  readonly y: (value: number) => number;
}

interface ValueAxisProps {
  /** What the axis counts. */
  readonly name: string;
  readonly scale: ValueScale;
  readonly height: number;
}

/** The numbers at the left of a figure; they stay while the figure scrolls. */
export function ValueAxis({ name, scale, height }: ValueAxisProps): ReactNode {
  return (
    <svg className="figure-scale" width={70} height={height} aria-hidden="true">
      <text className="figure-label" x={62} y={12} textAnchor="end">
        {name}
      </text>
      {scale.ticks.map((tick) => (
        <text key={tick} className="figure-label" x={62} y={scale.y(tick) + 4} textAnchor="end">
          {wholeNumber(Math.abs(tick))}
        </text>
      ))}
    </svg>
  );
}
