import type { MouseEvent, ReactNode } from 'react';
import { addressQuery, type Address } from '../state/address.js';
import { useDeskState } from '../state/desk-context.js';

interface ViewLinkProps {
  readonly to: Partial<Address>;
  readonly current?: boolean;
  readonly children: ReactNode;
}

/** A link to another place of the page: a real address, followed without loading the page anew. */
export function ViewLink({ to, current, children }: ViewLinkProps): ReactNode {
  const { address, goTo } = useDeskState();
  const follow = (event: MouseEvent): void => {
    if (event.metaKey || event.ctrlKey || event.shiftKey || event.altKey) return;
    event.preventDefault();
    goTo({ siteId: null, ...to });
  };
  return (
    <a
      href={addressQuery({ ...address, siteId: null, ...to })}
      onClick={follow}
      {...(current ? { 'aria-current': 'page' } : {})}
    >
      {children}
    </a>
  );
}
