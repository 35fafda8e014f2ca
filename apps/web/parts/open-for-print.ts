import { useEffect } from 'react';

/** Opens every folded part while the page is printed: paper cannot be unfolded. */
export function useOpenForPrint(): void {
  useEffect(() => {
    let opened: HTMLDetailsElement[] = [];
    const open = (): void => {
      opened = [...document.querySelectorAll<HTMLDetailsElement>('details:not([open])')];
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
