import type { ReactNode } from 'react';
import type { Failure } from '../state/use-loaded.js';
import { strings } from '../strings.data.js';
import { ProblemList } from './problem-list.js';

/** Why something could not be loaded or saved, and what to do. */
export function FailureNote({ failure }: { readonly failure: Failure }): ReactNode {
  if (failure === 'offline') {
    return (
      <div className="failure">
        <p>
          <strong>{strings.states.offline}.</strong> {strings.states.offlineRemedy}
        </p>
      </div>
    );
  }
  return (
    <div className="failure">
      <p>
        <strong>{failure.title}.</strong> {failure.detail}
      </p>
      <ProblemList problems={failure.problems} />
    </div>
  );
}
