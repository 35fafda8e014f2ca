import { useEffect } from 'react';

/** Folded parts that stay so on paper: inside a table's cell, and the inner workings of an estimate. */
const STAYS_FOLDED = 'td details, .estimate-tree details';

/** Opens every other folded part while the page is printed: paper cannot be unfolded. */
export function useOpenForPrint(): void {
  useEffect(() => {
    let opened: HTMLDetailsElement[] = [];
    const open = (): void => {
      const folded = [...document.querySelectorAll<HTMLDetailsElement>('details:not([open])')];
      opened = folded.filter((details) => !details.matches(STAYS_FOLDED));
      for (const details of opened) details.open = true;
    };
    const close = (): void => {
      for (const details of opened) details.open = false;
    };
    window.addEventListener('beforeprint', open);
    window.addEventListener('afterprint', close);
    return () => {
      window.removeEventListener('beforeprint', open);
      window.removeEventListener('afterprint', close);
    };
  }, []);
}
