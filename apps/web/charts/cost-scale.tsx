import { useId, type ReactNode } from 'react';
import type { CostBand } from '#explain/overview/plan-overview.js';
import { dollars } from '../format/numbers.js';
import { strings } from '../strings.data.js';

const WIDTH = 250;
const EDGE = 6;

/** A cost band drawn like the scale bar of a map, from zero: low to likely, likely to high. */
export function CostScale({ cost }: { readonly cost: CostBand }): ReactNode {
  const id = useId();
  const x = (value: number): number => EDGE + ((WIDTH - 2 * EDGE) * value) / Math.max(cost.high, 1);
  const text = strings.next.costDrawing(
    dollars(cost.low),
    dollars(cost.likely),
    dollars(cost.high),
  );
  return (
    <svg className="cost-scale" role="img" aria-labelledby={id} viewBox={`0 0 ${WIDTH} 34`}>
      <title id={id}>{text}</title>
      <path className="ink-line" d={`M${x(0)} 14H${x(cost.high)}M${x(0)} 10V18`} />
      <rect
        className="scale-full"
        x={x(cost.low)}
        y={9}
        width={x(cost.likely) - x(cost.low)}
        height={10}
      />
      <rect
        className="scale-open"
        x={x(cost.likely)}
        y={9}
        width={x(cost.high) - x(cost.likely)}
        height={10}
      />
      <text className="figure-label" x={x(0) - 3} y={32}>
        $0
      </text>
      <text className="figure-label" x={x(cost.low)} y={32} textAnchor="middle">
        {dollars(cost.low)}
      </text>
      <text className="figure-label" x={x(cost.high) + EDGE} y={32} textAnchor="end">
        {dollars(cost.high)}
      </text>
    </svg>
  );
}
