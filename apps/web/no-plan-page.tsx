import { useEffect, type ReactNode } from 'react';
import { Notice } from './parts/notice.js';
import { SolvePanel } from './sections/solve-panel.js';
import type { DeskContent } from './state/desk-content.js';
import { useSolve } from './state/use-solve.js';
import { strings } from './strings.js';

interface NoPlanPageProps {
  readonly content: Extract<DeskContent, { kind: 'no-plan-yet' }>;
  readonly onShowPlan: (planId: string) => void;
}

/** A campus without a plan: make the first one, and show it as soon as it is there. */
export function NoPlanPage({ content, onShowPlan }: NoPlanPageProps): ReactNode {
  const { campus, lastSolve } = content;
  const control = useSolve(campus.id, lastSolve);
  const firstPlanId = control.isRunning ? null : (control.solve?.planId ?? null);
  useEffect(() => {
    if (firstPlanId !== null) onShowPlan(firstPlanId);
  }, [firstPlanId, onShowPlan]);
  return (
    <Notice heading={strings.states.noPlan} remedy={strings.states.noPlanRemedy(campus.name)}>
      <SolvePanel
        control={control}
        lead={strings.solve.leadFirst}
        shownPlanId={firstPlanId}
        onShow={onShowPlan}
      />
    </Notice>
  );
}
