import { useEffect, useRef, type RefObject } from 'react';

/**
 * When `state` changes and the control that had the focus is gone, moves the focus to what took its
 * place: a keyboard would otherwise start again from the top of the page.
 */
export function useKeptFocus(place: RefObject<HTMLElement | null>, state: unknown): void {
  const before = useRef(state);
  useEffect(() => {
    if (before.current === state) return;
    before.current = state;
    if (document.activeElement === document.body && hasBeenUsed()) place.current?.focus();
  }, [place, state]);
}

/** Someone who has not touched the page yet has no place to lose. */
function hasBeenUsed(): boolean {
  return navigator.userActivation.hasBeenActive;
}
