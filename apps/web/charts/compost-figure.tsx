import type { ReactNode } from 'react';
import { strings } from '../strings.data.js';
import type { CompostPeriod } from './compost-rows.js';
import type { Layer, StackSpec } from './stack/stack-drawing.js';
import { StackFigure } from './stack/stack-figure.js';

const words = strings.compost;

/** What is used stands on the axis; what has to be bought for it hangs below. */
export function compostSpec(rows: readonly CompostPeriod[]): StackSpec<CompostPeriod> {
  return rows.some(({ bought }) => bought > 0) ? { ...spec, below: bought } : spec;
}

const bought: Layer<CompostPeriod> = {
  ...{ name: words.bought, className: 'layer-light' },
  of: (row) => row.bought,
};

const spec: StackSpec<CompostPeriod> = {
  layers: [
    { name: words.builds, className: 'layer-dark', of: (row) => row.builds },
    {
      name: words.topDress,
      className: 'layer-hatched',
      hatch: 'sparse',
      of: (row) => row.topDress,
    },
    {
      name: words.givenAway,
      className: 'layer-hatched',
      hatch: 'dots',
      of: (row) => row.givenAway,
    },
  ],
  lines: [
    { name: words.made, className: 'step-line', of: (row) => row.made },
    { name: words.stock, className: 'step-dashed', of: (row) => row.stock },
  ],
};

interface CompostFigureProps {
  readonly period: string;
  readonly rows: readonly CompostPeriod[];
}

/** Compost used by new and older sites, made, bought and left over. */
export function CompostFigure({ period, rows }: CompostFigureProps): ReactNode {
  return (
    <StackFigure
      title={words.title(period)}
      description={words.description(
        rows[0]?.label ?? '',
        rows.at(-1)?.label ?? '',
        rows.find(({ bought }) => bought > 0)?.label ?? null,
      )}
      axis={words.axis}
      spec={compostSpec(rows)}
      rows={rows}
    />
  );
}
