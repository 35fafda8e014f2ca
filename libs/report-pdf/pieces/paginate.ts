import type { Piece } from './piece.js';

/** Where a piece stands. `y` counts from the top of the text area, after what is repeated. */
export interface Placement<P> {
  readonly piece: P;
  readonly page: number;
  readonly y: number;
  readonly repeats: 'yes' | 'no';
}

/** What pagination needs to know of a piece. */
export type Sized = Pick<Piece, 'height' | 'gap' | 'keep' | 'starts'> & {
  readonly repeated?: { readonly height: number };
};

/**
 * Places pieces on pages of the given height, in order. Pieces kept with the next move to a new
 * page together; a chain taller than a page breaks where it must. A piece taller than a page is
 * an error of the caller and throws.
 */
export function paginate<P extends Sized>(
  pieces: readonly P[],
  pageHeight: number,
): readonly Placement<P>[] {
  const placements: Placement<P>[] = [];
  let page = 0;
  let bottom = 0;
  const turn = () => {
    page += 1;
    bottom = 0;
  };
  const place = (piece: P) => {
    if (bottom > 0 && bottom + piece.gap + piece.height > pageHeight) turn();
    const repeats = bottom === 0 && piece.repeated !== undefined ? 'yes' : 'no';
    const y = bottom === 0 ? (piece.repeated?.height ?? 0) : bottom + piece.gap;
    if (y + piece.height > pageHeight + ROUNDING) throw new RangeError(tooTall(piece, pageHeight));
    placements.push({ piece, page, y, repeats });
    bottom = y + piece.height;
  };
  for (const chain of chains(pieces)) {
    const starts = chain[0]?.starts === 'page';
    const chainHeight = chain.reduce((sum, { gap, height }) => sum + gap + height, 0);
    if (bottom > 0 && (starts || bottom + chainHeight > pageHeight)) turn();
    chain.forEach(place);
  }
  return placements;
}

const ROUNDING = 1e-6;

/** Runs of pieces that want to share a page. */
function chains<P extends Sized>(pieces: readonly P[]): readonly P[][] {
  const result: P[][] = [];
  let open: P[] = [];
  for (const piece of pieces) {
    if (piece.starts === 'page' && open.length > 0) {
      result.push(open);
      open = [];
    }
    open.push(piece);
    if (piece.keep === 'alone') {
      result.push(open);
      open = [];
    }
  }
  return open.length > 0 ? [...result, open] : result;
}

function tooTall(piece: Sized, pageHeight: number): string {
  return `a piece of ${piece.height} pt does not fit a page of ${pageHeight} pt`;
}
