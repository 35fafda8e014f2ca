import { useCallback, useEffect, useState, type RefCallback } from 'react';
import { flushSync } from 'react-dom';

export interface Growing {
  /** How many of the rows to draw. */
  readonly count: number;
  /** For an element after the last drawn row: more are drawn as it comes near. */
  readonly end: RefCallback<HTMLElement>;
  readonly showAll: () => void;
}

/**
 * Draws a long list from its beginning and lets it grow as a reader scrolls, so that what a key costs
 * does not grow with the list. Another list (by identity) begins anew; on paper there is always all of it.
 */
export function useGrowing(rows: readonly unknown[], step: number): Growing {
  const [drawn, setDrawn] = useState({ rows, count: step });
  const count = drawn.rows === rows ? drawn.count : step;
  const showAll = useCallback(() => setDrawn({ rows, count: rows.length }), [rows]);

  const end = useCallback(
    (element: HTMLElement | null) => {
      if (element === null) return undefined;
      const watch = new IntersectionObserver(
        ([entry]) => {
          if (entry?.isIntersecting === true) setDrawn({ rows, count: count + step });
        },
        { root: element.closest('[role="region"]'), rootMargin: '400px' },
      );
      watch.observe(element);
      return () => watch.disconnect();
    },
    [rows, count, step],
  );

  useEffect(() => {
    const print = (): void => flushSync(showAll);
    window.addEventListener('beforeprint', print);
    return () => window.removeEventListener('beforeprint', print);
  }, [showAll]);

  return { count, end, showAll };
}
