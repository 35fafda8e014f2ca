import type { ReactNode } from 'react';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { api } from '../api.js';
import { dollars, wholeNumber } from '../format/numbers.js';
import { strings } from '../strings.data.js';
import { TierTable } from './tier-table.js';

interface HeadlineProps {
  readonly overview: PlanOverview;
  readonly planId: string;
}

/** The plan in four statements, before anything else. */
export function Headline({ overview, planId }: HeadlineProps): ReactNode {
  const { headline, solve, totals, promises, firstYear, lastYear } = overview;
  const words = strings.headline;
  return (
    <div className="headline">
      <h1>{strings.heading(firstYear, lastYear)}</h1>
      <p className="lead">{headline.nextSite}</p>
      <dl className="statements">
        <div>
          <dt>{words.firstLimit}</dt>
          <dd>{headline.firstLimit}</dd>
        </div>
        <div>
          <dt>{words.promise}</dt>
          <dd>{headline.promise}</dd>
        </div>
        <div>
          <dt>{words.proof}</dt>
          <dd>{solve.sentence}</dd>
        </div>
      </dl>
      <p className="quiet">
        {words.sitesBuilt(totals.sitesBuilt, totals.candidates)},{' '}
        {words.extent(wholeNumber(totals.areaBuiltSqFt), dollars(totals.capitalNominalDollars))}{' '}
        {strings.advice}
      </p>
      <p className="brief-link">
        <a href={api.administrationBriefPath(planId)} download>
          {strings.documents.brief}
        </a>
      </p>
      <TierTable tiers={solve.tiers} promises={promises} />
    </div>
  );
}
