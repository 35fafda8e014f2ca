import type { ReactNode } from 'react';
import type { Problem } from '../api.js';
import type { Failure } from '../state/use-loaded.js';
import { strings } from '../strings.data.js';
import { ProblemList } from './problem-list.js';

/** What stands against it; where that is an error, what is only to be looked at says nothing of it. */
function reasons(problems: readonly Problem[]): readonly Problem[] {
  const errors = problems.filter(({ severity }) => severity === 'error');
  return errors.length > 0 ? errors : problems;
}

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
      <ProblemList problems={reasons(failure.problems)} />
    </div>
  );
}
