import { useEffect, type ReactNode } from 'react';
import { useShowPlan } from './state/use-show-plan.js';
import { Notice } from './parts/notice.js';
import { SolvePanel } from './sections/solve-panel.js';
import type { DeskContent } from './state/desk-content.js';
import { useSolve, type SolveControl } from './state/use-solve.js';
import { strings } from './strings.data.js';

interface NoPlanPageProps {
  readonly content: Extract<DeskContent, { kind: 'no-plan-yet' }>;
}

/** A campus without a plan: make the first one, and show it as soon as it is there. */
export function NoPlanPage({ content }: NoPlanPageProps): ReactNode {
  const onShowPlan = useShowPlan();
  const { campus, lastSolve, plan } = content;
  const control = useSolve(campus.id, lastSolve);
  const firstPlanId = control.isRunning ? null : (control.solve?.planId ?? null);
  useEffect(() => {
    if (firstPlanId !== null) onShowPlan(firstPlanId);
  }, [firstPlanId, onShowPlan]);
  const { heading, remedy, lead } = stateInWords(control, plan);
  return (
    <Notice heading={heading} remedy={remedy(campus.name)}>
      <SolvePanel control={control} lead={lead} shownPlanId={firstPlanId} onShow={onShowPlan} />
    </Notice>
  );
}

interface StateInWords {
  readonly heading: string;
  readonly remedy: (campus: string) => string;
  /** Above the button; `null` where the outcome says what to do. */
  readonly lead: string | null;
}

function stateInWords(
  { isRunning, solve }: SolveControl,
  plan: NoPlanPageProps['content']['plan'],
): StateInWords {
  const words = strings.states;
  if (isRunning) {
    return { heading: words.firstPlan, remedy: words.firstPlanRemedy, lead: null };
  }
  if (solve?.ending === 'no-plan') {
    return { heading: words.noPlanExists, remedy: words.noPlanExistsRemedy, lead: null };
  }
  if (plan === 'unreadable') {
    return { heading: words.outdated, remedy: words.outdatedRemedy, lead: strings.solve.leadFirst };
  }
  return { heading: words.noPlan, remedy: words.noPlanRemedy, lead: strings.solve.leadFirst };
}
