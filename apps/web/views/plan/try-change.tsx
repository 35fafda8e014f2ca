import { useEffect, type ReactNode } from 'react';
import type { CampusFile } from '../../api.js';
import { FailureNote } from '../../parts/failure-note.js';
import { Section } from '../../parts/section.js';
import { useShowPlan } from '../../state/use-show-plan.js';
import type { Loaded } from '../../state/use-loaded.js';
import { strings } from '../../strings.data.js';
import { ChangeForm } from './change-form.js';
import { PlacedByHand } from './placed-by-hand.js';
import { TrialResult } from './trial-result.js';
import type { TrialControl } from './use-trial.js';
import { placementsWith, type Wish } from './wish.js';

const words = strings.change;

interface TryChangeProps {
  /** The campus as it is now. */
  readonly loaded: Loaded<{ readonly file: CampusFile }>;
  readonly control: TrialControl;
  readonly wish: Wish;
  readonly onWish: (wish: Wish) => void;
  /** The trial is over and its plan is kept. */
  readonly onKept: () => void;
}

/** Move a site to another year or bar it, see within seconds what gives, keep it or undo it. */
export function TryChange(props: TryChangeProps): ReactNode {
  const { loaded, control, wish, onWish, onKept } = props;
  const showPlan = useShowPlan();
  useUndoKey(control.undo);
  const { trial } = control;
  return (
    <Section id="change" heading={strings.sections.change}>
      <p>{words.lead}</p>
      {loaded.kind === 'loading' && <p className="quiet">{strings.states.loadingView}</p>}
      {loaded.kind === 'failed' && <FailureNote failure={loaded.failure} />}
      {loaded.kind === 'loaded' && loaded.value.file.candidateSites.length === 0 && (
        <p>{strings.next.remedies.noCandidate}</p>
      )}
      {loaded.kind === 'loaded' && loaded.value.file.candidateSites.length > 0 && (
        <>
          <ChangeForm
            file={loaded.value.file}
            wish={wish}
            isBusy={trial.kind === 'saving' || trial.kind === 'solving'}
            onChange={onWish}
            onTry={() => control.start(wish.site, placementsWith(wish, loaded.value.file))}
          />
          <TrialResult
            control={control}
            onKeep={(planId) => {
              showPlan(planId);
              control.settle();
              onKept();
            }}
          />
          <PlacedByHand file={loaded.value.file} onFree={(site) => control.start(site, [])} />
        </>
      )}
    </Section>
  );
}

/** Ctrl+Z (or Cmd+Z) undoes, unless a text field has the focus and the key is its own. */
function useUndoKey(undo: () => void): void {
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      const isUndo = (event.ctrlKey || event.metaKey) && event.key === 'z' && !event.shiftKey;
      const isText = event.target instanceof Element && event.target.matches('input, textarea');
      if (!isUndo || isText) return;
      event.preventDefault();
      undo();
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [undo]);
}
