import type { Point } from '#report/document/drawing.js';

/** Something of fixed height that is drawn whole on one page. */
export interface Piece {
  readonly height: number;
  /** Space above it, dropped at the top of a page. */
  readonly gap: number;
  /** `next`: stays on one page with the piece after it, as far as a page has room. */
  readonly keep: 'next' | 'alone';
  /** `page`: starts a new page unless it is at the top of one already. */
  readonly starts: 'anywhere' | 'page';
  /** Drawn above it when it comes first on a page, such as a table's header row. */
  readonly repeated?: Repeated;
  /** Draws it with its top left corner at a point of the current page. */
  readonly draw: (at: Point) => void;
}

export interface Repeated {
  readonly height: number;
  readonly draw: (at: Point) => void;
}

/** A piece that may stand anywhere; fields given win. */
export function piece(height: number, draw: Piece['draw'], rest: Partial<Piece> = {}): Piece {
  return { height, draw, gap: 0, keep: 'alone', starts: 'anywhere', ...rest };
}

/** The same pieces, kept on one page if a page has room for them all. */
export function together(pieces: readonly Piece[]): readonly Piece[] {
  const last = pieces.length - 1;
  return pieces.map((one, index) => (index < last ? { ...one, keep: 'next' } : one));
}

/** The same pieces with the space above the first set to at least `gap`. */
export function spaced(pieces: readonly Piece[], gap: number): readonly Piece[] {
  return pieces.map((one, index) => (index === 0 ? { ...one, gap: Math.max(one.gap, gap) } : one));
}
