import type { PlanDocument } from '#report/document/plan-document.js';

/** Where the text area lies on a page, in points from the top left corner. */
export interface PageGeometry {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly top: number;
  /** Both papers share one line length, so that tables and drawings fit either. */
  readonly contentWidth: number;
  readonly contentHeight: number;
  /** Top of the running footer. */
  readonly footerTop: number;
}

const PAPER = { letter: { width: 612, height: 792 }, a4: { width: 595.28, height: 841.89 } };
const CONTENT_WIDTH = 468;
const TOP_MARGIN = 60;
const EDGE_BELOW_FOOTER = 34;
const GAP_ABOVE_FOOTER = 22;

/** The text area of a paper above a footer of the given height. */
export function pageGeometry(paper: PlanDocument['paper'], footerHeight: number): PageGeometry {
  const { width, height } = PAPER[paper];
  const footerTop = height - EDGE_BELOW_FOOTER - footerHeight;
  return {
    width,
    height,
    left: (width - CONTENT_WIDTH) / 2,
    top: TOP_MARGIN,
    contentWidth: CONTENT_WIDTH,
    contentHeight: footerTop - GAP_ABOVE_FOOTER - TOP_MARGIN,
    footerTop,
  };
}

/** The line length shared by all papers, in points. */
export const MEASURE = CONTENT_WIDTH;
