import { useEffect, useState, type PointerEvent } from 'react';
import type { YearSite } from '#explain/overview/plan-overview.js';

/** A site's mark on its way from one column of the strip to another. */
export interface SiteDrag {
  readonly site: YearSite;
  readonly from: number;
  readonly to: number;
}

type MarkEvent = PointerEvent<SVGElement>;

/** What a mark listens to so that it can be dragged. */
export interface MarkHandlers {
  readonly onPointerDown: (event: MarkEvent) => void;
  readonly onPointerMove: (event: MarkEvent) => void;
  readonly onPointerUp: () => void;
  readonly onPointerCancel: () => void;
}

export interface DragControl {
  readonly drag: SiteDrag | null;
  readonly handlersOf: (site: YearSite, column: number) => MarkHandlers;
}

interface DragOptions {
  readonly columnWidth: number;
  readonly columnCount: number;
  /** Told where a mark was let go, if that is another column. */
  readonly onDrop: (siteId: string, column: number) => void;
}

/** Drags marks between columns with a pointer; Escape puts a mark back. */
export function useSiteDrag({ columnWidth, columnCount, onDrop }: DragOptions): DragControl {
  const [drag, setDrag] = useState<SiteDrag | null>(null);
  const isDragging = drag !== null;

  useEffect(() => {
    if (!isDragging) return undefined;
    const press = ({ key }: KeyboardEvent): void => {
      if (key === 'Escape') setDrag(null);
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [isDragging]);

  const columnAt = (event: MarkEvent): number => {
    const left = event.currentTarget.ownerSVGElement?.getBoundingClientRect().left ?? 0;
    const column = Math.floor((event.clientX - left) / columnWidth);
    return Math.min(columnCount - 1, Math.max(0, column));
  };

  const handlersOf = (site: YearSite, column: number): MarkHandlers => ({
    onPointerDown: (event) => {
      if (event.button !== 0) return;
      event.preventDefault();
      event.currentTarget.setPointerCapture(event.pointerId);
      setDrag({ site, from: column, to: column });
    },
    onPointerMove: (event) => {
      if (!isDragging) return;
      const to = columnAt(event);
      scrollAlong(event);
      setDrag((old) => (old === null || old.to === to ? old : { ...old, to }));
    },
    onPointerUp: () => {
      if (drag !== null && drag.to !== drag.from) onDrop(drag.site.site, drag.to);
      setDrag(null);
    },
    onPointerCancel: () => setDrag(null),
  });
  return { drag, handlersOf };
}

const EDGE = 24;

/** Near an edge of the box that the strip scrolls in, the years beyond come into sight. */
function scrollAlong(event: MarkEvent): void {
  const box = event.currentTarget.closest('.figure-box');
  if (box === null) return;
  const { left, right } = box.getBoundingClientRect();
  if (event.clientX > right - EDGE) box.scrollLeft += EDGE / 2;
  if (event.clientX < left + EDGE) box.scrollLeft -= EDGE / 2;
}
