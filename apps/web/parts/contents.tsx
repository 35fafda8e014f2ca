import type { ReactNode } from 'react';
import { strings } from '../strings.data.js';

/** The sections of the document, in their order. */
export function Contents(): ReactNode {
  return (
    <nav className="contents" aria-label={strings.contents}>
      <ul>
        {Object.entries(strings.sections).map(([id, heading]) => (
          <li key={id}>
            <a href={`#${id}`}>{heading}</a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
