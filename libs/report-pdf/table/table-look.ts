import type { Table } from '#report/document/table.js';
import type { TypeStyle } from '../text/type-styles.js';
import { TYPE } from '../text/type-styles.js';

/** Type and padding of a table's cells, in points. */
export interface TableLook {
  readonly cell: TypeStyle;
  readonly padX: number;
  readonly padY: number;
}

const LOOKS: Record<Table['density'], TableLook> = {
  regular: { cell: TYPE.cell, padX: 6, padY: 3.5 },
  compact: { cell: TYPE.compactCell, padX: 5, padY: 1.75 },
  dense: { cell: TYPE.compactCell, padX: 3, padY: 0.25 },
};

export function tableLook(density: Table['density']): TableLook {
  return LOOKS[density];
}
