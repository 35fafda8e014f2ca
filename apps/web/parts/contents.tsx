import type { ReactNode } from 'react';
import { strings } from '../strings.data.js';

export type SectionId = keyof typeof strings.sections;

/** The sections of a long view, in their order. */
export function Contents({ ids }: { readonly ids: readonly SectionId[] }): ReactNode {
  return (
    <nav className="contents" aria-label={strings.contents}>
      <ul>
        {ids.map((id) => (
          <li key={id}>
            <a href={`#${id}`}>{strings.sections[id]}</a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
