import type { ReactNode } from 'react';
import { strings } from '../strings.data.js';
import type { Band } from './bands/band-drawing.js';
import { Patterns } from './patterns.js';
import type { StackRow, StackSpec } from './stack/stack-drawing.js';

interface KeyItem {
  readonly name: string;
  readonly swatch: ReactNode;
}

/** A key: each item with the very mark that the figure uses. */
export function Legend({
  id,
  items,
}: {
  readonly id: string;
  readonly items: readonly KeyItem[];
}): ReactNode {
  return (
    <ul className="legend">
      {items.map(({ name, swatch }) => (
        <li key={name}>
          <svg width="24" height="16" aria-hidden="true">
            <Patterns id={id} />
            {swatch}
          </svg>
          {name}
        </li>
      ))}
    </ul>
  );
}

const square = { x: 5, y: 1, width: 14, height: 14 };

/** The marks of the year strip. */
export function stripKey(id: string): readonly KeyItem[] {
  const { built, proposed, small, blocked, missed, limit, band } = strings.strip;
  return [
    { name: built, swatch: <rect className="site-mark" {...square} /> },
    {
      name: proposed,
      swatch: <rect className="site-mark" {...square} style={{ fill: `url(#${id}-dense)` }} />,
    },
    { name: small, swatch: <rect className="site-mark" x={8} y={4} width={8.4} height={8.4} /> },
    { name: blocked, swatch: <rect className="blocked-mark" {...square} /> },
    { name: missed, swatch: <path className="accent-line" d="M1 13h4v-8M23 13h-4v-8" /> },
    { name: limit, swatch: <path className="accent-line limit-line" d="M12 0V16" /> },
    { name: band, swatch: <BandSwatch /> },
  ];
}

function BandSwatch(): ReactNode {
  return (
    <>
      <rect className="band-fill step-1" x={1} y={12} width={6} height={3} />
      <rect className="band-fill step-3" x={7} y={7} width={6} height={8} />
      <rect className="band-fill step-5" x={13} y={1} width={10} height={14} />
      <rect className="band-frame" x={0.5} y={1} width={23} height={14} />
    </>
  );
}

/** The layers, lines and mark of a stacked figure. */
export function stackKey<Row extends StackRow>(
  { layers, below, lines, mark }: StackSpec<Row>,
  id: string,
): readonly KeyItem[] {
  return [
    ...[...layers, ...(below === undefined ? [] : [below])].map(({ name, className, hatch }) => ({
      name,
      swatch: (
        <rect
          className={className}
          {...square}
          {...(hatch === undefined ? {} : { style: { fill: `url(#${id}-${hatch})` } })}
        />
      ),
    })),
    ...lines.map(({ name, className }) => ({
      name,
      swatch: <path className={className} d="M0 8H24" />,
    })),
    ...(mark === undefined
      ? []
      : [{ name: mark.name, swatch: <path className="over-mark" d="M7 4h10l-5 9z" /> }]),
  ];
}

/** The bands of a figure of ranges. */
export function bandKey(bands: readonly Band[], id: string): readonly KeyItem[] {
  return bands.map(({ name, look }) => ({
    name,
    swatch: (
      <>
        <rect
          className={`range is-${look}`}
          x={1}
          y={1}
          width={22}
          height={14}
          {...(look === 'hatched' ? { style: { fill: `url(#${id}-sparse)` } } : {})}
        />
        <path className={`range-middle is-${look}`} d="M1 8H23" />
      </>
    ),
  }));
}
