import type { ReactNode } from 'react';
import { strings } from '../strings.data.js';
import type { StripDrawing } from './strip-drawing.js';
import { MARK } from './strip-layout.js';
import type { SiteDrag } from './use-site-drag.js';

/** Where a dragged site would go: its column framed, an open mark in it, and both in words. */
export function StripDrag(props: StripDrawing & { readonly drag: SiteDrag }): ReactNode {
  const { years, columns, layout, drag } = props;
  const middle = columns.middle(drag.to);
  const label = strings.strip.dragged(drag.site.site, years[drag.to]?.row.year ?? '');
  const isRight = middle > columns.total / 2;
  return (
    <g className="strip-drag">
      <rect
        className="drop-column"
        x={columns.left(drag.to) + 1}
        y={1}
        width={columns.width - 2}
        height={layout.baseline}
      />
      <rect
        className="drop-mark"
        x={middle - MARK / 2}
        y={layout.baseline - MARK - 4}
        width={MARK}
        height={MARK}
      />
      <text
        className="accent-label"
        x={isRight ? columns.left(drag.to) - 4 : columns.left(drag.to + 1) + 4}
        y={14}
        textAnchor={isRight ? 'end' : 'start'}
      >
        {label}
      </text>
    </g>
  );
}
