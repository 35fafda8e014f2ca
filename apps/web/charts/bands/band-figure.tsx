import { useId, type ReactNode } from 'react';
import { useWidth } from '../../parts/use-width.js';
import { fitColumns, type Columns } from '../columns.js';
import { bandKey, Legend } from '../legend.js';
import { Patterns } from '../patterns.js';
import { ValueAxis, type ValueScale } from '../value-axis.js';
import { YearLabels } from '../year-labels.js';
import {
  BAND_FIGURE_HEIGHT,
  bandPath,
  bandScale,
  linePath,
  PLOT_BOTTOM,
  type Band,
} from './band-drawing.js';

interface BandFigureProps {
  readonly title: string;
  readonly description: string;
  /** What the axis counts. */
  readonly axis: string;
  /** Top of the axis; left out: the highest value. */
  readonly top?: number;
  /** One for each range of a band. */
  readonly periods: readonly { readonly label: string; readonly year: string }[];
  readonly bands: readonly Band[];
}

/** Ranges over the years as bands, with their key; the figure scrolls in its own box where there is no room. */
export function BandFigure(props: BandFigureProps): ReactNode {
  const { title, description, axis, periods, bands } = props;
  const id = useId();
  const [box, room] = useWidth<HTMLDivElement>(800);
  const columns = fitColumns(periods.length, room, { least: 18, most: 64 });
  const scale = bandScale(bands, props.top);
  return (
    <figure>
      <div className="figure-frame">
        <ValueAxis name={axis} scale={scale} height={BAND_FIGURE_HEIGHT} />
        <div className="figure-box" ref={box} role="region" aria-label={title} tabIndex={0}>
          <svg
            role="img"
            aria-labelledby={`${id}-title ${id}-description`}
            width={columns.total}
            height={BAND_FIGURE_HEIGHT}
          >
            <title id={`${id}-title`}>{title}</title>
            <desc id={`${id}-description`}>{description}</desc>
            <Patterns id={id} />
            {scale.ticks.map((tick) => (
              <path key={tick} className="grid-line" d={`M0 ${scale.y(tick)}H${columns.total}`} />
            ))}
            {bands.map((band) => (
              <BandMarks key={band.name} {...{ band, columns, scale, id }} />
            ))}
            <path className="ink-line" d={`M0 ${PLOT_BOTTOM}H${columns.total}`} />
            <YearLabels rows={periods} columns={columns} y={PLOT_BOTTOM + 17} />
          </svg>
        </div>
      </div>
      <figcaption>
        <Legend id={`${id}-key`} items={bandKey(bands, `${id}-key`)} />
      </figcaption>
    </figure>
  );
}

interface BandMarksProps {
  readonly band: Band;
  readonly columns: Columns;
  readonly scale: ValueScale;
  readonly id: string;
}

function BandMarks({ band, columns, scale, id }: BandMarksProps): ReactNode {
  const { look, ranges } = band;
  const plane = { columns, scale };
  const middle = linePath(
    ranges.map(({ middle: value }) => value),
    plane,
  );
  const fill = look === 'hatched' ? { style: { fill: `url(#${id}-sparse)` } } : {};
  return (
    <g>
      <path className={`range is-${look}`} d={bandPath(ranges, plane)} {...fill} />
      <path className="step-halo" d={middle} />
      <path className={`range-middle is-${look}`} d={middle} />
    </g>
  );
}
