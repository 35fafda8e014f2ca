import type { ReactNode } from 'react';
import type { CareDrawing } from './care-drawing.js';
import { wantedHours, type CareRow } from './care-rows.js';

interface Layer {
  readonly key: 'mature' | 'year3' | 'year2' | 'year1' | 'building';
  readonly className: string;
  readonly fill: ((id: string) => string) | null;
}

/** From the bottom up: what stays is at the bottom, what passes is on top. */
const LAYERS: readonly Layer[] = [
  { key: 'mature', className: 'care-mature', fill: null },
  { key: 'year3', className: 'care-hatched', fill: (id) => `url(#${id}-sparse)` },
  { key: 'year2', className: 'care-hatched', fill: (id) => `url(#${id}-dense)` },
  { key: 'year1', className: 'care-year1', fill: null },
  { key: 'building', className: 'care-hatched', fill: (id) => `url(#${id}-dots)` },
];

/** One stacked bar for each row, with a mark above it where care is left undone. */
export function CareBars({ rows, columns, scale, id }: CareDrawing): ReactNode {
  const inset = Math.min(5, columns.width * 0.14);
  return (
    <g>
      {rows.map((row, index) => (
        <g key={row.label}>
          {stack(row).map(({ layer, from, to }) => (
            <rect
              key={layer.key}
              className={layer.className}
              x={columns.left(index) + inset}
              width={columns.width - 2 * inset}
              y={scale.y(to)}
              height={scale.y(from) - scale.y(to)}
              {...(layer.fill === null ? {} : { style: { fill: layer.fill(id) } })}
            />
          ))}
          {row.unserved >= 0.5 && (
            <path
              className="unserved-mark"
              d={`M${columns.middle(index) - 5} ${scale.y(wantedHours(row)) - 12}h10l-5 9z`}
            />
          )}
        </g>
      ))}
    </g>
  );
}

function stack(row: CareRow): readonly { layer: Layer; from: number; to: number }[] {
  let from = 0;
  return LAYERS.flatMap((layer) => {
    const to = from + row[layer.key];
    const piece = { layer, from, to };
    from = to;
    return to > piece.from ? [piece] : [];
  });
}
