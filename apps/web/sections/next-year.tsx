import type { ReactNode } from 'react';
import type { NextSite, PlanOverview, Reason } from '#explain/overview/plan-overview.js';
import { CostScale } from '../charts/cost-scale.js';
import { dollars, wholeNumber } from '../format/numbers.js';
import { remedyWithoutSite } from '../format/remedy-without-site.js';
import { Section } from '../parts/section.js';
import { strings } from '../strings.data.js';

const words = strings.next;

/** The decision of the coming year: what, why, why not, and what must be settled first. */
export function NextYear({ overview }: { readonly overview: PlanOverview }): ReactNode {
  const { next, cautions } = overview;
  return (
    <Section id="next" heading={strings.sections.next}>
      {next.sites.length === 0 ? (
        <p>
          {words.none(next.year)} {remedyWithoutSite(overview)}
        </p>
      ) : (
        <p>
          {words.lead(next.year, next.planting)}{' '}
          {next.comparedWith > 0 && words.compared(next.comparedWith, next.year)}
        </p>
      )}
      {next.sites.map((site) => (
        <SiteDecision key={site.site} site={site} />
      ))}
      {cautions.length > 0 && (
        <aside className="cautions" aria-labelledby="cautions-heading">
          <h3 id="cautions-heading">{words.cautions}</h3>
          <ul>
            {cautions.map((caution) => (
              <li key={caution}>{caution}</li>
            ))}
          </ul>
        </aside>
      )}
    </Section>
  );
}

function SiteDecision({ site }: { readonly site: NextSite }): ReactNode {
  return (
    <article className="decision" aria-labelledby={`next-${site.site}`}>
      <header>
        <h3 id={`next-${site.site}`}>
          <span className="site-id">{site.site}</span> {site.name}
        </h3>
        <p>{words.facts(site.zone, site.buildType, wholeNumber(site.areaSqFt))}</p>
      </header>
      <div className="decision-reasons">
        <h4>{words.for}</h4>
        <Reasons reasons={site.reasons} />
        <h4>{words.against}</h4>
        {site.against.length === 0 ? (
          <p>{words.noneAgainst}</p>
        ) : (
          <Reasons reasons={site.against} />
        )}
      </div>
      <div className="decision-terms">
        <h4>{words.gates}</h4>
        <OpenGates site={site} />
        <h4>{words.cost}</h4>
        <Cost site={site} />
      </div>
    </article>
  );
}

function Reasons({ reasons }: { readonly reasons: readonly Reason[] }): ReactNode {
  return (
    <ol className="reasons">
      {reasons.map((reason) => (
        <li key={reason.sentence}>
          {reason.sentence} <small>{words.source(reason.source)}</small>
        </li>
      ))}
    </ol>
  );
}

function OpenGates({ site }: { readonly site: NextSite }): ReactNode {
  if (site.openGates.length === 0) return <p>{words.noGates}</p>;
  return (
    <ul className="gates">
      {site.openGates.map((gate) => (
        <li key={gate.what}>
          <strong>{gate.what}</strong> {gate.consequence}{' '}
          <small>{words.clearedBy(gate.clearedBy)}</small>
        </li>
      ))}
    </ul>
  );
}

function Cost({ site: { cost } }: { readonly site: NextSite }): ReactNode {
  return (
    <>
      <p className="cost">
        <strong>{words.costRange(dollars(cost.low), dollars(cost.high))}.</strong>{' '}
        {words.costLikely(dollars(cost.likely), cost.dollarsOf)}
      </p>
      <CostScale cost={cost} />
      <p>
        <small>{words.costClass}</small>
      </p>
    </>
  );
}
