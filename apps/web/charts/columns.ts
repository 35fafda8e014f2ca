/** Evenly spaced columns of a figure, one for each year, in pixels. */
export interface Columns {
  readonly count: number;
  readonly width: number;
  readonly total: number;
  /** Left edge of a column. */
  readonly left: (index: number) => number;
  readonly middle: (index: number) => number;
}

/** As wide as there is room for, but never narrower than `least`: then the figure scrolls. */
export function fitColumns(count: number, room: number, limits: ColumnLimits): Columns {
  const width = Math.min(limits.most, Math.max(limits.least, room / Math.max(1, count)));
  return {
    count,
    width,
    total: Math.max(width * count, 1),
    left: (index) => width * index,
    middle: (index) => width * (index + 0.5),
  };
}

export interface ColumnLimits {
  readonly least: number;
  readonly most: number;
}
