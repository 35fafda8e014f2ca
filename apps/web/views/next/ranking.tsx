import { useCallback, useState, type ReactNode } from 'react';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { api, type SiteSuitability } from '../../api.js';
import { amount, capitalized, wholeNumber, wholePercent } from '../../format/numbers.js';
import { DataTable, type Column } from '../../parts/data-table.js';
import { FailureNote } from '../../parts/failure-note.js';
import { Section } from '../../parts/section.js';
import { ViewLink } from '../../parts/view-link.js';
import type { PlanContent } from '../../state/desk-context.js';
import { useLoaded } from '../../state/use-loaded.js';
import { strings } from '../../strings.data.js';

const words = strings.ranking;
const SHOWN = 10;

/** How the candidates are suited, gates apart from scores, and how sure each rank is. */
export function Ranking({ content }: { readonly content: PlanContent }): ReactNode {
  const { campus, overview } = content;
  const load = useCallback(() => api.suitability(campus.id), [campus]);
  const [loaded] = useLoaded(load);
  const [isWhole, setWhole] = useState(false);
  return (
    <Section id="ranking" heading={strings.sections.ranking}>
      {loaded.kind === 'loading' && <p className="quiet">{strings.states.loadingView}</p>}
      {loaded.kind === 'failed' && <FailureNote failure={loaded.failure} />}
      {loaded.kind === 'loaded' && loaded.value.sites.length === 0 && (
        <p>{strings.next.remedies.noCandidate}</p>
      )}
      {loaded.kind === 'loaded' && loaded.value.sites.length > 0 && (
        <>
          <p>{words.lead(wholeNumber(loaded.value.draws))}</p>
          <DataTable
            caption={words.caption}
            columns={columns}
            rows={ranked(loaded.value.sites)
              .slice(0, isWhole ? undefined : SHOWN)
              .map((site) => row(site, overview))}
          />
          {!isWhole && loaded.value.sites.length > SHOWN && (
            <button type="button" onClick={() => setWhole(true)}>
              {words.all(loaded.value.sites.length)}
            </button>
          )}
          <p className="quiet">{words.basis}</p>
        </>
      )}
    </Section>
  );
}

const columns: readonly Column[] = [
  { head: words.rank, kind: 'number' },
  { head: words.site, kind: 'name' },
  { head: words.points, kind: 'number' },
  { head: words.topThree, kind: 'number' },
  { head: words.gates, kind: 'text' },
  { head: words.planned, kind: 'text' },
  { head: words.made, kind: 'plain' },
];

function ranked(sites: readonly SiteSuitability[]): readonly SiteSuitability[] {
  return [...sites].sort((a, b) => a.rank - b.rank);
}

function row(site: SiteSuitability, { years }: PlanOverview) {
  const planned = years.find((year) => year.sites.some((one) => one.site === site.site));
  return {
    key: site.site,
    cells: [
      rankInWords(site),
      <ViewLink key="site" to={{ view: 'sites', siteId: site.site }}>
        {site.site} {site.name}
      </ViewLink>,
      pointsInWords(site),
      wholePercent(site.topThree),
      words.gateStates[site.gates],
      planned?.year ?? strings.sites.notPlanned,
      <Contributions key="made" site={site} />,
    ],
  };
}

function rankInWords({ rank, rankLow, rankHigh }: SiteSuitability): string {
  return rankLow === rankHigh
    ? wholeNumber(rank)
    : words.rankBetween(wholeNumber(rank), wholeNumber(rankLow), wholeNumber(rankHigh));
}

function pointsInWords({ least, most }: SiteSuitability): string {
  return Math.round(least) === Math.round(most)
    ? wholeNumber(most)
    : words.pointsBetween(wholeNumber(least), wholeNumber(most));
}

/** What the points are made of, the largest first. */
function Contributions({ site }: { readonly site: SiteSuitability }): ReactNode {
  const parts = [...site.contributions].sort((a, b) => (b.points ?? 0) - (a.points ?? 0));
  return (
    <details>
      <summary>{words.open}</summary>
      <ul className="contributions">
        {parts.map(({ criterion, points, weight }) => (
          <li key={criterion}>
            {points === null
              ? words.contributionUnknown(capitalized(criterion), amount(weight))
              : words.contribution(capitalized(criterion), amount(points), amount(weight))}
          </li>
        ))}
      </ul>
    </details>
  );
}
