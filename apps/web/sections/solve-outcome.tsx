import type { ReactNode } from 'react';
import type { Refusal, Solve } from '../api.js';
import type { SolveControl } from '../state/use-solve.js';
import { ConflictQuestion } from './conflict-question.js';
import { strings } from '../strings.data.js';

const words = strings.solve;

interface SolveOutcomeProps {
  readonly control: SolveControl;
  readonly shownPlanId: string | null;
  readonly onShow: (planId: string) => void;
}

/** How the last solve ended, and what to do now. */
export function SolveOutcome({ control, shownPlanId, onShow }: SolveOutcomeProps): ReactNode {
  const { solve, isRunning, refusal } = control;
  return (
    <>
      <div role="status" className="outcome">
        {refusal === 'offline' && <p>{strings.states.offlineRemedy}</p>}
        {refusal !== null && refusal !== 'offline' && <Refused refusal={refusal} />}
        {!isRunning &&
          solve !== null &&
          (solve.planId === null || solve.planId !== shownPlanId) && (
            <Ending solve={solve} onShow={onShow} />
          )}
      </div>
      {!isRunning && solve?.ending === 'no-plan' && (
        <ConflictQuestion id="conflicts" solve={solve} />
      )}
    </>
  );
}

interface EndingProps {
  readonly solve: Solve;
  readonly onShow: (planId: string) => void;
}

function Ending({ solve, onShow }: EndingProps): ReactNode {
  const { planId, state, ending, problem } = solve;
  if (state === 'failed') return <Failure problem={problem} />;
  if (planId !== null) {
    return (
      <>
        <p>{state === 'cancelled' || ending === 'cancelled' ? words.cancelled : words.done}</p>
        <button type="button" className="primary" onClick={() => onShow(planId)}>
          {words.show}
        </button>
      </>
    );
  }
  if (ending === 'no-plan') return <Conflict solve={solve} />;
  return (
    <p>
      {state === 'cancelled' || ending === 'cancelled-without-plan'
        ? words.cancelledWithout
        : words.outOfTime}
    </p>
  );
}

/** No plan can exist: what stands against what, by name. */
export function Conflict({ solve }: { readonly solve: Solve }): ReactNode {
  if (solve.conflict.length === 0) return <p>{words.conflictUnnamed}</p>;
  return (
    <div className="conflict">
      <p>
        <strong>{words.conflict}</strong>
      </p>
      <ul>
        {solve.conflict.map(({ id, name }) => (
          <li key={id}>{name}</li>
        ))}
      </ul>
      <p>{words.conflictRemedy}</p>
    </div>
  );
}

function Failure({ problem }: { readonly problem: Solve['problem'] }): ReactNode {
  return (
    <p>
      <strong>{words.failed}</strong> {problem?.problem} {problem?.remedy ?? words.failedRemedy}
    </p>
  );
}

function Refused({ refusal }: { readonly refusal: Refusal }): ReactNode {
  return (
    <p>
      <strong>{refusal.title}.</strong> {refusal.detail} {refusal.remedy}
    </p>
  );
}
