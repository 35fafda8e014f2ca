import { useLayoutEffect, useRef, type RefObject } from 'react';

let lastFocused: Element | null = null;
document.addEventListener('focusin', ({ target }) => {
  lastFocused = target instanceof Element ? target : null;
});

/**
 * When `state` changes and the control that had the focus is gone with it, moves the focus to what
 * took its place: a keyboard would otherwise start again from the top of the page.
 */
export function useKeptFocus(place: RefObject<HTMLElement | null>, state: unknown): void {
  const before = useRef(state);
  useLayoutEffect(() => {
    if (before.current === state) return;
    before.current = state;
    if (lastFocused?.isConnected === false && document.activeElement === document.body) {
      place.current?.focus();
    }
  }, [place, state]);
}
