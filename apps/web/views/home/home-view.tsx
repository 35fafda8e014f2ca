import type { ReactNode } from 'react';
import type { PlanOverview, UnknownRow } from '#explain/overview/plan-overview.js';
import { api } from '../../api.js';
import { monthInWords } from '../../format/numbers.js';
import { ViewLink } from '../../parts/view-link.js';
import type { PlanContent } from '../../state/desk-context.js';
import { strings } from '../../strings.data.js';
import { dueIn } from './due.js';

const words = strings.home;

/** The state of the program on one screen: the decision, the promise, the limit, what is open and due. */
export function HomeView({ content }: { readonly content: PlanContent }): ReactNode {
  const { overview, plan } = content;
  const { headline, solve } = overview;
  return (
    <>
      <div className="headline">
        <h1>{words.heading(overview.next.year)}</h1>
        <p className="lead">{headline.nextSite}</p>
        <dl className="statements">
          <div>
            <dt>{strings.headline.promise}</dt>
            <dd>{headline.promise}</dd>
          </div>
          <div>
            <dt>{strings.headline.firstLimit}</dt>
            <dd>{headline.firstLimit}</dd>
          </div>
          <div>
            <dt>{strings.headline.proof}</dt>
            <dd>{solve.sentence}</dd>
          </div>
        </dl>
        <p className="quiet">{strings.advice}</p>
      </div>
      <div className="home-columns">
        <ToFindOut overview={overview} />
        <DueNow overview={overview} />
      </div>
      <p className="home-ways">
        <ViewLink to={{ view: 'next' }}>{words.toNext}</ViewLink>
        <ViewLink to={{ view: 'plan' }}>{words.toPlan}</ViewLink>
        <a href={api.administrationBriefPath(plan.id)} download>
          {strings.documents.brief}
        </a>
      </p>
    </>
  );
}

const SHOWN = 6;

function ToFindOut({ overview }: { readonly overview: PlanOverview }): ReactNode {
  const open = inOrderOfUse(overview);
  return (
    <section aria-labelledby="find-out" className="section">
      <h2 id="find-out">{words.findOut}</h2>
      {open.length === 0 ? (
        <p>{strings.unknowns.none}</p>
      ) : (
        <ol className="reasons">
          {open.slice(0, SHOWN).map((row) => (
            <li key={`${row.site} ${row.what}`}>
              <strong>
                {[row.site, row.name].filter(Boolean).join(' ') || strings.unknowns.ofCampus}:
              </strong>{' '}
              {row.what} <small>{strings.next.clearedBy(row.clearedBy)}</small>
            </li>
          ))}
        </ol>
      )}
      {open.length > SHOWN && (
        <p>
          <ViewLink to={{ view: 'set-up' }}>{words.allUnknowns(open.length)}</ViewLink>
        </p>
      )}
    </section>
  );
}

/** What bars next year's sites comes first. */
function inOrderOfUse({ next, unknowns }: PlanOverview): readonly UnknownRow[] {
  const first = next.sites.flatMap(({ openGates }) => openGates);
  const isFirst = (row: UnknownRow): boolean =>
    first.some(({ site, what }) => site === row.site && what === row.what);
  return [...first, ...unknowns.filter((row) => !isFirst(row))];
}

function DueNow({ overview }: { readonly overview: PlanOverview }): ReactNode {
  const today = new Date();
  const { hires, nextHire, usual } = dueIn(today, overview.hires);
  return (
    <section aria-labelledby="due" className="section">
      <h2 id="due">{words.due(monthInWords(today))}</h2>
      <ul className="reasons">
        {hires.map((hire) => (
          <li key={`${hire.position} ${hire.startsIn}`}>
            <strong>{words.askNow(hire.position, hire.askBy, hire.startsIn)}</strong>
          </li>
        ))}
        {usual.map((work) => (
          <li key={work}>{work}</li>
        ))}
      </ul>
      {nextHire !== null && (
        <p>{words.askNext(nextHire.position, nextHire.askBy, nextHire.startsIn)}</p>
      )}
      <p className="quiet">{words.usualBasis}</p>
    </section>
  );
}
