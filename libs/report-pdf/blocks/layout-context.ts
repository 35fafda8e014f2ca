import type { Canvas } from '../page/canvas.js';
import type { Tag, TagTree } from '../tags/tag-tree.js';
import type { Bookmarks } from '../tags/bookmarks.js';

/** What every block needs to lay itself out. */
export interface LayoutContext {
  readonly canvas: Canvas;
  readonly tags: TagTree;
  readonly bookmarks: Bookmarks;
  /** Line length in points. */
  readonly width: number;
  /** Height of the text area, the most a piece may take. */
  readonly pageHeight: number;
  /** Where new structure elements go. */
  readonly parent: Tag;
}

/** The same context with another parent or line length. */
export function within(
  context: LayoutContext,
  change: Partial<Pick<LayoutContext, 'parent' | 'width'>>,
): LayoutContext {
  return { ...context, ...change };
}
