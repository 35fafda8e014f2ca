import type { ReactNode } from 'react';
import { NextYear } from '../../sections/next-year.js';
import type { PlanContent } from '../../state/desk-context.js';
import { strings } from '../../strings.data.js';
import { DecisionRecord } from './decision-record.js';
import { OtherChoices } from './other-choices.js';
import { Ranking } from './ranking.js';
import './next.css';

/** The committee's view: the choice for next year, what speaks for and against it, and the decision. */
export default function NextView({ content }: { readonly content: PlanContent }): ReactNode {
  const { overview } = content;
  return (
    <>
      <div className="headline">
        <h1>{strings.home.heading(overview.next.year)}</h1>
        <p className="lead">{overview.headline.nextSite}</p>
      </div>
      <NextYear overview={overview} />
      <OtherChoices planId={content.plan.id} />
      <Ranking content={content} />
      <DecisionRecord content={content} />
    </>
  );
}
