import type { ReactNode } from 'react';
import type { SolveProgress } from '../api.js';
import { amount, gapPercent } from '../format/numbers.js';
import { tierInWords } from '../format/tier-words.js';
import type { SolveControl } from '../state/use-solve.js';
import { strings } from '../strings.data.js';

const words = strings.solve;

/** A running solve: what it is at, how far, and the way to stop it. */
export function SolveProgressView({ control }: { readonly control: SolveControl }): ReactNode {
  const { solve, isCancelling, isOutOfTouch, cancel } = control;
  const progress = solve?.progress ?? null;
  const seconds = solve?.limits.seconds ?? null;
  return (
    <div className="progress">
      <p role="status">{statusOf(control)}</p>
      {seconds !== null && (
        <progress
          aria-label={words.progressLabel}
          max={seconds}
          value={Math.min(seconds, progress?.elapsedSeconds ?? 0)}
        />
      )}
      {progress !== null && <Figures progress={progress} />}
      {isOutOfTouch && <p role="alert">{words.lost}</p>}
      <button type="button" onClick={cancel} aria-disabled={isCancelling}>
        {words.cancel}
      </button>
    </div>
  );
}

function statusOf({ solve, isCancelling }: SolveControl): string {
  if (isCancelling) return words.cancelling;
  if (solve === null || solve.state === 'queued') return words.queued;
  const tier = solve.progress?.tier ?? null;
  return tier === null ? words.solving : words.solvingAim(lowerFirst(tierInWords(tier)));
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

function Figures({ progress }: { readonly progress: SolveProgress }): ReactNode {
  const { elapsedSeconds, bestObjective, bound, gap, message } = progress;
  return (
    <>
      <dl className="figures">
        <div>
          <dt>{words.elapsed}</dt>
          <dd>{words.elapsedSeconds(Math.floor(elapsedSeconds))}</dd>
        </div>
        <div>
          <dt>{words.best}</dt>
          <dd>{bestObjective === null ? words.noneYet : amount(bestObjective)}</dd>
        </div>
        <div>
          <dt>{words.bound}</dt>
          <dd>{bound === null ? words.noneYet : amount(bound)}</dd>
        </div>
        <div>
          <dt>{words.gap}</dt>
          <dd>{gap === null ? words.noneYet : gapPercent(gap)}</dd>
        </div>
      </dl>
      {message !== '' && <p className="quiet">{message}</p>}
    </>
  );
}
