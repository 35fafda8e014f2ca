import { useEffect, useState, type ReactNode } from 'react';
import { type BroughtPlan, type ImportPlan, type Problem, type Solve } from '../../api.js';
import { ProblemList } from '../../parts/problem-list.js';
import { useDeskState } from '../../state/desk-context.js';
import { useShowPlan } from '../../state/use-show-plan.js';
import { isActive, watchSolve } from '../../state/watch-solve.js';
import { strings } from '../../strings.data.js';

const words = strings.setUp.bundle;

/** The plans that a bundle holds, as the dry run judges them. */
export function PlansInBundle({ plans }: { readonly plans: readonly ImportPlan[] }): ReactNode {
  if (plans.length === 0) return null;
  return (
    <>
      <h3>{words.plans}</h3>
      <ul className="import-plans">
        {plans.map(({ name, outcome, problems }) => (
          <li key={name}>
            {words.outcomes[outcome](name)}
            <Reasons problems={problems} />
          </li>
        ))}
      </ul>
    </>
  );
}

/** Plans of a bundle while they are checked, and what came of it. */
export function BroughtPlans({ plans }: { readonly plans: readonly BroughtPlan[] }): ReactNode {
  if (plans.length === 0) return null;
  return (
    <ul className="import-plans" aria-live="polite">
      {plans.map(({ name, solveId }) => (
        <li key={solveId}>
          <OnePlan name={name} solveId={solveId} />
        </li>
      ))}
    </ul>
  );
}

function OnePlan({ name, solveId }: BroughtPlan): ReactNode {
  const [solve, setSolve] = useState<Solve | null>(null);
  const { refresh } = useDeskState();
  const showPlan = useShowPlan();
  useEffect(() => {
    const onSolve = (seen: Solve): void => {
      setSolve(seen);
      if (!isActive(seen)) refresh();
    };
    return watchSolve(solveId, { onSolve, onTouch: () => undefined });
  }, [solveId, refresh]);
  if (solve === null || isActive(solve)) return words.checking(name);
  const { planId, problem } = solve;
  if (planId === null) {
    return (
      <>
        {words.refused(name)}
        <Reasons problems={problem === null ? [] : [problem]} />
      </>
    );
  }
  return (
    <>
      {words.kept(name)}{' '}
      <button type="button" className="small" onClick={() => showPlan(planId)}>
        {words.show}
      </button>
    </>
  );
}

function Reasons({ problems }: { readonly problems: readonly Problem[] }): ReactNode {
  return problems.length === 0 ? null : <ProblemList problems={problems} />;
}
