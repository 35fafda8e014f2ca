import type { ReactNode } from 'react';
import { dollars } from '../format/numbers.js';
import { strings } from '../strings.data.js';
import type { LedgerRow } from './fund-rows.js';
import type { Layer, Line, StackSpec } from './stack/stack-drawing.js';
import { StackFigure } from './stack/stack-figure.js';

const words = strings.money;

const paysBack: Layer<LedgerRow> = {
  ...{ name: words.paysBack, className: 'layer-hatched', hatch: 'dots' },
  of: (row) => Math.max(0, -row.paidBack),
};

const floorLine: Line<LedgerRow> = {
  name: words.floor,
  className: 'step-dashed',
  of: (row) => row.floor,
};

/** What is kept is at the bottom, beside the floor; a whole bar is all that there was. */
export function fundSpec(rows: readonly LedgerRow[]): StackSpec<LedgerRow> {
  return {
    layers: [
      { name: words.closing, className: 'layer-light', of: (row) => row.closing },
      { name: words.lapsed, className: 'layer-dark', of: (row) => row.lapsed },
      ...(rows.some(({ paidBack }) => paidBack < 0) ? [paysBack] : []),
      { name: words.spent, className: 'layer-hatched', hatch: 'sparse', of: (row) => row.spent },
    ],
    lines: [
      { name: words.received, className: 'step-line', of: (row) => row.received },
      ...(floorOf(rows) > 0 ? [floorLine] : []),
    ],
  };
}

/** The highest floor of all years. */
function floorOf(rows: readonly LedgerRow[]): number {
  return Math.max(0, ...rows.map(({ floor }) => floor));
}

interface FundFigureProps {
  readonly name: string;
  readonly rows: readonly LedgerRow[];
}

/** A ledger by year: what comes in, is spent, lapses and is carried forward, over its floor. */
export function FundFigure({ name, rows }: FundFigureProps): ReactNode {
  const floor = floorOf(rows);
  return (
    <StackFigure
      title={words.fundTitle(name)}
      description={words.fundDescription(
        rows[0]?.year ?? '',
        rows.at(-1)?.year ?? '',
        floor > 0 ? dollars(floor) : null,
      )}
      axis={words.axis}
      spec={fundSpec(rows)}
      rows={rows}
    />
  );
}
