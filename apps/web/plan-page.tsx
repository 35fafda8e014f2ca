import type { ReactNode } from 'react';
import { Section } from './parts/section.js';
import { Alternatives } from './sections/alternatives.js';
import { Documents } from './sections/documents.js';
import { Headline } from './sections/headline.js';
import { Hires } from './sections/hires.js';
import { Limits } from './sections/limits.js';
import { Money } from './sections/money.js';
import { NextYear } from './sections/next-year.js';
import { PlanByYear } from './sections/plan-by-year.js';
import { Promises } from './sections/promises.js';
import { SeasonCare } from './sections/season-care.js';
import { SolvePanel } from './sections/solve-panel.js';
import { Unknowns } from './sections/unknowns.js';
import { YearStrip } from './sections/year-strip.js';
import type { DeskContent } from './state/desk-content.js';
import { useSolve } from './state/use-solve.js';
import { strings } from './strings.data.js';

interface PlanPageProps {
  readonly content: Extract<DeskContent, { kind: 'plan' }>;
  readonly onShowPlan: (planId: string) => void;
}

/** One plan as a document, in the order in which the job asks its questions. */
export function PlanPage({ content, onShowPlan }: PlanPageProps): ReactNode {
  const { overview, plan, campus, lastSolve } = content;
  const control = useSolve(campus.id, lastSolve?.planId ? null : lastSolve);
  return (
    <>
      <Headline overview={overview} planId={plan.id} />
      <NextYear overview={overview} />
      <YearStrip overview={overview} />
      <SeasonCare overview={overview} />
      <PlanByYear overview={overview} />
      <Hires overview={overview} />
      <Promises overview={overview} />
      <Limits overview={overview} />
      <Alternatives overview={overview} />
      <Unknowns overview={overview} />
      <Money overview={overview} />
      <Documents planId={plan.id} />
      <Section id="solve" heading={strings.sections.solve}>
        <SolvePanel
          control={control}
          lead={strings.solve.lead}
          shownPlanId={plan.id}
          onShow={onShowPlan}
        />
      </Section>
    </>
  );
}
