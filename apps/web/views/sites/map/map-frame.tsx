import type { ReactNode } from 'react';
import { wholeNumber } from '../../../format/numbers.js';
import { strings } from '../../../strings.data.js';
import { scaleBarFeet, type Box } from './projection.js';

interface MapFrameProps {
  readonly box: Box;
  /** Feet to a pixel. */
  readonly feet: number;
}

/** The grounds of scale bar and north arrow. */
export function platesOf({ box, feet }: MapFrameProps): readonly [Box, Box] {
  const bar = scaleBarFeet(box.width);
  return [
    {
      left: box.left + 6 * feet,
      top: box.top + box.height - 40 * feet,
      width: bar + 74 * feet,
      height: 34 * feet,
    },
    {
      left: box.left + box.width - 40 * feet,
      top: box.top + 4 * feet,
      width: 32 * feet,
      height: 62 * feet,
    },
  ];
}

/** Scale bar and north arrow, always of the same size on the screen. */
export function MapFrame({ box, feet }: MapFrameProps): ReactNode {
  const bar = scaleBarFeet(box.width);
  const at = { x: box.left + 14 * feet, y: box.top + box.height - 14 * feet };
  return (
    <g className="map-frame" aria-hidden="true">
      {platesOf({ box, feet }).map(({ left, top, width, height }, place) => (
        <rect key={place} className="map-plate" x={left} y={top} width={width} height={height} />
      ))}
      <path
        className="scale-full"
        d={`M${at.x} ${at.y - 5 * feet}h${bar / 2}v${5 * feet}h${-bar / 2}z`}
      />
      <path
        className="scale-open"
        d={`M${at.x + bar / 2} ${at.y - 5 * feet}h${bar / 2}v${5 * feet}h${-bar / 2}z`}
      />
      <text x={at.x - 2 * feet} y={at.y - 10 * feet} style={{ fontSize: 12 * feet }}>
        0
      </text>
      <text x={at.x + bar - 10 * feet} y={at.y - 10 * feet} style={{ fontSize: 12 * feet }}>
        {strings.map.feet(wholeNumber(bar))}
      </text>
      <NorthArrow x={box.left + box.width - 24 * feet} y={box.top + 12 * feet} feet={feet} />
    </g>
  );
}

interface NorthArrowProps {
  readonly x: number;
  readonly y: number;
  readonly feet: number;
}

function NorthArrow({ x, y, feet }: NorthArrowProps): ReactNode {
  return (
    <g transform={`translate(${x} ${y}) scale(${feet})`}>
      <path className="scale-full" d="M0 0L-7 28L0 22Z" />
      <path className="scale-open" d="M0 0L7 28L0 22Z" />
      <text x={0} y={44} textAnchor="middle" style={{ fontSize: 13 }}>
        {strings.map.north}
      </text>
    </g>
  );
}
