import type { ReactNode } from 'react';
import type { PlanContent } from '../../state/desk-context.js';
import { strings } from '../../strings.data.js';
import { ComparePlans } from './compare-plans.js';
import { AdditionQuestion, LimitQuestion, PromiseQuestion } from './questions.js';
import { Courses } from './courses.js';
import { FuturesQuestion } from './futures/futures-question.js';

/** Other courses and other plans, told as what would be different, never as a second whole plan. */
export default function WhatIfView({ content }: { readonly content: PlanContent }): ReactNode {
  return (
    <>
      <h1 className="view-heading">{strings.whatIf.heading}</h1>
      <p>{strings.whatIf.lead}</p>
      <Courses overview={content.overview} />
      <PromiseQuestion planId={content.plan.id} />
      <LimitQuestion planId={content.plan.id} />
      <AdditionQuestion planId={content.plan.id} />
      <FuturesQuestion planId={content.plan.id} />
      <ComparePlans content={content} />
    </>
  );
}
