import type { ColorName } from '../page/colors.js';

export type Family = 'serif' | 'sans';
export type Face = 'regular' | 'bold' | 'italic' | 'bold-italic';

/** How letters look: size and line height (`leading`) in points. */
export interface TypeStyle {
  readonly family: Family;
  readonly face: Face;
  readonly size: number;
  readonly leading: number;
  readonly color: ColorName;
}

const serif = (size: number, leading: number): TypeStyle => ({
  family: 'serif',
  face: 'regular',
  size,
  leading,
  color: 'ink',
});

const sans = (size: number, leading: number): TypeStyle => ({
  ...serif(size, leading),
  family: 'sans',
});

const strong = (style: TypeStyle): TypeStyle => ({ ...style, face: 'bold' });

/** Every style of the report: serif for reading, sans for tables, labels and furniture. */
export const TYPE = {
  program: { ...strong(sans(9.5, 12)), color: 'accent' },
  title: strong(serif(25, 29)),
  subject: { ...serif(13, 18), face: 'italic' },
  titleFacts: { ...sans(9, 12), color: 'gray' },
  heading1: { ...strong(serif(16, 20)), color: 'accent' },
  heading2: strong(serif(12.5, 16)),
  heading3: strong(sans(10, 13)),
  lead: serif(13, 18.5),
  body: serif(10.5, 14.5),
  small: { ...sans(8.5, 11.5), color: 'gray' },
  caption: strong(sans(9.5, 12.5)),
  cell: sans(9, 12),
  compactCell: sans(8.25, 10.5),
  boxTitle: strong(sans(10, 13)),
  boxText: sans(9.5, 13),
  factLabel: { ...sans(8.5, 12.5), color: 'gray' },
  factValue: sans(9.5, 12.5),
  footer: { ...sans(7.75, 10), color: 'gray' },
} as const satisfies Record<string, TypeStyle>;

/** The same style in bold; italic stays italic. */
export function emboldened(style: TypeStyle): TypeStyle {
  return { ...style, face: style.face === 'italic' ? 'bold-italic' : 'bold' };
}

/** The same style in italic; bold stays bold. */
export function italicized(style: TypeStyle): TypeStyle {
  return { ...style, face: style.face === 'bold' ? 'bold-italic' : 'italic' };
}
