import type { ReactNode } from 'react';
import { strings } from '../strings.data.js';
import type { CareRow } from './care-rows.js';
import type { StackSpec } from './stack/stack-drawing.js';
import { StackFigure } from './stack/stack-figure.js';

const { ages, careOf, building, supplyNow, supplyProposed, unservedMark } = strings.care;

/** What stays is at the bottom, what passes is on top. */
export const careSpec: StackSpec<CareRow> = {
  layers: [
    { name: careOf(ages.mature), className: 'layer-light', of: (row) => row.mature },
    {
      name: careOf(ages.year3),
      className: 'layer-hatched',
      hatch: 'sparse',
      of: (row) => row.year3,
    },
    {
      name: careOf(ages.year2),
      className: 'layer-hatched',
      hatch: 'dense',
      of: (row) => row.year2,
    },
    { name: careOf(ages.year1), className: 'layer-dark', of: (row) => row.year1 },
    { name: building, className: 'layer-hatched', hatch: 'dots', of: (row) => row.building },
  ],
  lines: [
    { name: supplyNow, className: 'step-line', of: (row) => row.supplyNow },
    { name: supplyProposed, className: 'step-dashed', of: (row) => row.supplyProposed },
  ],
  mark: { name: unservedMark, isAt: (row) => row.unserved >= 0.5 },
};

interface CareFigureProps {
  readonly name: string;
  readonly rows: readonly CareRow[];
  /** When the hours first fall short, in words; `null` if they never do. */
  readonly shortIn: string | null;
}

/** Hours wanted, stacked by age of site, against the hours of the people there. */
export function CareFigure({ name, rows, shortIn }: CareFigureProps): ReactNode {
  return (
    <StackFigure
      title={strings.care.title(name)}
      description={description(rows, shortIn)}
      axis={strings.care.axis}
      spec={careSpec}
      rows={rows}
    />
  );
}

function description(rows: readonly CareRow[], shortIn: string | null): string {
  const first = rows[0]?.label ?? '';
  const last = rows.at(-1)?.label ?? '';
  return strings.care.description(first, last, shortIn);
}
