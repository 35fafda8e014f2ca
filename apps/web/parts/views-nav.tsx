import type { ReactNode } from 'react';
import { VIEWS } from '../state/address.js';
import { useDeskState } from '../state/desk-context.js';
import { strings } from '../strings.data.js';
import { ViewLink } from './view-link.js';

/** The seven views of the program. */
export function ViewsNav(): ReactNode {
  const { address } = useDeskState();
  return (
    <nav className="views" aria-label={strings.views.label}>
      <ul>
        {VIEWS.map((view) => (
          <li key={view}>
            <ViewLink to={{ view }} current={view === address.view}>
              {strings.views.names[view]}
            </ViewLink>
          </li>
        ))}
      </ul>
    </nav>
  );
}
