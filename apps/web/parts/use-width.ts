import { useLayoutEffect, useRef, useState, type RefObject } from 'react';

/**
 * The width of an element in CSS pixels, kept up to date; `assumed` until it is measured. An element
 * that is folded away or not laid out yet has no width, and nothing can be drawn to that.
 */
export function useWidth<E extends HTMLElement>(assumed: number): [RefObject<E | null>, number] {
  const element = useRef<E>(null);
  const [width, setWidth] = useState(assumed);
  useLayoutEffect(() => {
    const measured = element.current;
    if (measured === null) return undefined;
    const measure = (): void => {
      if (measured.clientWidth > 0) setWidth(measured.clientWidth);
    };
    const observer = new ResizeObserver(measure);
    observer.observe(measured);
    measure();
    return () => observer.disconnect();
  }, []);
  return [element, width];
}
