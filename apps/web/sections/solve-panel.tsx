import { useRef, useState, type ReactNode } from 'react';
import { useKeptFocus } from '../parts/kept-focus.js';
import type { SolveControl } from '../state/use-solve.js';
import { strings } from '../strings.data.js';
import { SolveOutcome } from './solve-outcome.js';
import { SolveProgressView } from './solve-progress.js';

const words = strings.solve;

interface SolvePanelProps {
  readonly control: SolveControl;
  readonly lead: string | null;
  /** The plan on the page; a solve that ended with another plan offers to show it. */
  readonly shownPlanId: string | null;
  readonly onShow: (planId: string) => void;
}

/** Solve, watch it, stop it; the plan on the page stays as it is meanwhile. */
export function SolvePanel({ control, lead, shownPlanId, onShow }: SolvePanelProps): ReactNode {
  const [seconds, setSeconds] = useState<number>(words.times[1].seconds);
  const panel = useRef<HTMLDivElement>(null);
  useKeptFocus(panel, control.isRunning);
  return (
    <div className="solve" ref={panel} tabIndex={-1}>
      {!control.isRunning && lead !== null && <p>{lead}</p>}
      <SolveOutcome control={control} shownPlanId={shownPlanId} onShow={onShow} />
      {control.isRunning ? (
        <SolveProgressView control={control} />
      ) : (
        <form
          onSubmit={(event) => {
            event.preventDefault();
            control.start(seconds);
          }}
        >
          <label className="field">
            {words.time}
            <select value={seconds} onChange={(event) => setSeconds(Number(event.target.value))}>
              {words.times.map((time) => (
                <option key={time.seconds} value={time.seconds}>
                  {time.label}
                </option>
              ))}
            </select>
          </label>
          <button type="submit" className="primary">
            {words.start}
          </button>
        </form>
      )}
    </div>
  );
}
