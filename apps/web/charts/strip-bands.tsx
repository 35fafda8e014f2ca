import type { ReactNode } from 'react';
import type { StripDrawing } from './strip-drawing.js';
import { BAND_HEIGHT } from './strip-layout.js';
import { BANDS, type Band } from './strip-years.js';

/** The thin bands: a bar for each year, the fuller the darker, so that gray print keeps it. */
export function StripBands(drawing: StripDrawing): ReactNode {
  return (
    <g>
      {BANDS.map((band) => (
        <BandRow key={band} band={band} {...drawing} />
      ))}
    </g>
  );
}

function BandRow({
  band,
  years,
  columns,
  layout,
}: StripDrawing & { readonly band: Band }): ReactNode {
  const top = layout.bandTop[band];
  return (
    <g>
      {years.map(({ row, used }, index) => (
        <BandCell
          key={row.year}
          left={columns.left(index)}
          width={columns.width}
          top={top}
          used={used[band]}
        />
      ))}
      <rect className="band-frame" x={0.5} y={top} width={columns.total - 1} height={BAND_HEIGHT} />
    </g>
  );
}

interface BandCellProps {
  readonly left: number;
  readonly width: number;
  readonly top: number;
  readonly used: number | null;
}

function BandCell({ left, width, top, used }: BandCellProps): ReactNode {
  if (used === null) {
    const middle = { x: left + width / 2, y: top + BAND_HEIGHT - 7 };
    return (
      <text className="figure-count" {...middle} textAnchor="middle">
        ?
      </text>
    );
  }
  const height = Math.max(1, used * BAND_HEIGHT);
  return (
    <rect
      className={`band-fill step-${shadeOf(used)}`}
      x={left}
      y={top + BAND_HEIGHT - height}
      width={width}
      height={height}
    />
  );
}

/** Five shades; the darkest only where all is used. */
function shadeOf(used: number): number {
  if (used >= 0.995) return 5;
  return Math.min(4, 1 + Math.floor(used * 4));
}
