import { useRef, type ReactNode } from 'react';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import type { Solve } from '../../api.js';
import { DataTable, type Column } from '../../parts/data-table.js';
import { FailureNote } from '../../parts/failure-note.js';
import { useKeptFocus } from '../../parts/kept-focus.js';
import { ConflictQuestion } from '../../sections/conflict-question.js';
import { Conflict } from '../../sections/solve-outcome.js';
import { strings } from '../../strings.data.js';
import { planChanges } from './plan-changes.js';
import type { TrialControl } from './use-trial.js';

const words = strings.change;

interface TrialResultProps {
  readonly control: TrialControl;
  readonly onKeep: (planId: string) => void;
}

/** How a trial stands: running, what gives, or what stands against it. */
export function TrialResult({ control, onKeep }: TrialResultProps): ReactNode {
  const { trial, before, canUndo, stop, longer, undo } = control;
  const place = useRef<HTMLDivElement>(null);
  useKeptFocus(place, trial.kind);
  const isRunning = trial.kind === 'solving' || trial.kind === 'saving';
  return (
    <div className="trial" ref={place} tabIndex={-1}>
      <p role="status">{statusOf(control)}</p>
      {trial.kind === 'failed' && <FailureNote failure={trial.failure} />}
      {trial.kind === 'solving' && (
        <button type="button" onClick={stop}>
          {strings.solve.cancel}
        </button>
      )}
      {trial.kind === 'solved' && (
        <Gives
          before={before}
          after={trial.after}
          solve={trial.solve}
          onKeep={onKeep}
          onLonger={longer}
        />
      )}
      {canUndo && !isRunning && (
        <button type="button" onClick={undo}>
          {words.undo}
        </button>
      )}
    </div>
  );
}

function statusOf({ trial }: TrialControl): string {
  switch (trial.kind) {
    case 'none':
    case 'failed':
      return '';
    case 'saving':
      return words.saving;
    case 'solving':
      return trial.isOutOfTouch ? strings.solve.lost : words.solving;
    case 'undone':
      return words.undone;
    case 'solved':
      return trial.after === null ? words.noPlan : words.solved;
  }
}

interface GivesProps {
  readonly before: PlanOverview;
  readonly after: PlanOverview | null;
  readonly solve: Solve;
  readonly onKeep: (planId: string) => void;
  readonly onLonger: () => void;
}

const columns: readonly Column[] = [
  { head: strings.changes.what, kind: 'name' },
  { head: strings.changes.before, kind: 'words' },
  { head: strings.changes.after, kind: 'words' },
];

function Gives({ before, after, solve, onKeep, onLonger }: GivesProps): ReactNode {
  const { planId } = solve;
  if (solve.ending === 'no-plan') {
    return (
      <>
        <Conflict solve={solve} />
        <ConflictQuestion id="trial-conflicts" solve={solve} />
      </>
    );
  }
  if (solve.problem !== null) {
    return (
      <p>
        <strong>{solve.problem.problem}</strong> {solve.problem.remedy}
      </p>
    );
  }
  if (after === null || planId === null) {
    return (
      <>
        <p>{words.noPlanRemedy}</p>
        <button type="button" className="primary" onClick={onLonger}>
          {words.longer}
        </button>{' '}
      </>
    );
  }
  const changes = planChanges(before, after);
  return (
    <>
      {changes.length === 0 ? (
        <p>{strings.changes.nothing}</p>
      ) : (
        <DataTable
          caption={strings.changes.caption}
          columns={columns}
          rows={changes.map((row) => ({
            key: row.what,
            cells: [row.what, row.before, row.after],
          }))}
        />
      )}
      <p>{after.solve.sentence}</p>
      <button type="button" className="primary" onClick={() => onKeep(planId)}>
        {words.keep}
      </button>{' '}
    </>
  );
}
