import { useLayoutEffect, useRef, useState, type RefObject } from 'react';

/** The width of an element in CSS pixels, kept up to date; `assumed` until it is measured. */
export function useWidth<E extends HTMLElement>(assumed: number): [RefObject<E | null>, number] {
  const element = useRef<E>(null);
  const [width, setWidth] = useState(assumed);
  useLayoutEffect(() => {
    const measured = element.current;
    if (measured === null) return undefined;
    const observer = new ResizeObserver(() => setWidth(measured.clientWidth));
    observer.observe(measured);
    setWidth(measured.clientWidth);
    return () => observer.disconnect();
  }, []);
  return [element, width];
}
