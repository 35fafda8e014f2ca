import { useState, type ReactNode } from 'react';
import type { NextSite, PlanOverview } from '#explain/overview/plan-overview.js';
import { api } from '../../../api.js';
import { dollars, wholeNumber } from '../../../format/numbers.js';
import type { CampusContent } from '../../../state/desk-context.js';
import { strings } from '../../../strings.data.js';
import { SiteEditor } from '../edit/site-editor.js';
import type { SiteRow } from '../site-rows.js';
import { EvidenceTable } from './evidence-table.js';
import { FactsTable } from './facts-table.js';
import { GatesTable } from './gates-table.js';
import { WhyHere } from './why-here.js';
import { SiteEstimate } from './site-estimate.js';

const words = strings.record;

export interface SiteRecordProps {
  readonly row: SiteRow;
  readonly content: CampusContent;
  readonly loaded: Awaited<ReturnType<typeof api.campus>>;
}

/** All that is known, planned and estimated of one site. */
export function SiteRecord({ row, content, loaded }: SiteRecordProps): ReactNode {
  const [isEditing, setEditing] = useState(false);
  const overview = content.kind === 'plan' ? content.overview : null;
  return (
    <article className="section record" aria-labelledby="record-heading">
      <h2 id="record-heading">
        <span className="site-id">{row.id}</span> {row.name}
      </h2>
      <p>
        {words.facts(row.zone, wholeNumber(row.areaSqFt))} {placeInPlan(row)}
      </p>
      <SiteEditor
        row={row}
        campus={content.campus}
        loaded={loaded}
        isOpen={isEditing}
        onOpen={() => setEditing(true)}
        onClose={() => setEditing(false)}
      />
      {!isEditing && (
        <>
          {content.kind === 'plan' && row.stage !== 'planted' && (
            <p>
              <a href={api.dossierPath(content.plan.id, row.id)} download>
                {words.dossier}
              </a>
            </p>
          )}
          <Cautions row={row} overview={overview} />
          <div className="record-columns">
            <FactsTable site={row.site} />
            <GatesTable site={row.site} />
          </div>
          {content.kind === 'plan' && row.stage !== 'planted' && (
            <WhyHere planId={content.plan.id} site={row.id} />
          )}
          <SiteEstimate campusId={content.campus.id} version={loaded.version} site={row.id} />
          <EvidenceTable site={row.site} />
        </>
      )}
    </article>
  );
}

function placeInPlan({ stage, year, cost, works }: SiteRow): string {
  const notes = works.length === 0 ? '' : ` ${words.works(works)}`;
  if (stage === 'planted') return words.planted(year ?? '') + notes;
  if (stage === 'not planned' || cost === null) return words.notPlanned + notes;
  return words.planned(year ?? '', dollars(cost.low), dollars(cost.high)) + notes;
}

interface CautionsProps {
  readonly row: SiteRow;
  readonly overview: PlanOverview | null;
}

/** What must be heeded on this ground, and who decides. */
function Cautions({ row, overview }: CautionsProps): ReactNode {
  const next = overview?.next.sites.find(({ site }) => site === row.id);
  return (
    <aside className="cautions" aria-labelledby="record-cautions">
      <h3 id="record-cautions">{strings.next.cautions}</h3>
      <ul>
        {cautionsOf(row, next).map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </aside>
  );
}

function cautionsOf({ site }: SiteRow, next: NextSite | undefined): readonly string[] {
  const { cautions } = words;
  const has = (kind: string): boolean => site.gates.some((gate) => gate.kind === kind);
  return [
    cautions.locate,
    ...(has('contamination') ? [cautions.soil] : []),
    ...(has('root-protection') ? [cautions.roots] : []),
    ...(next === undefined ? [] : next.openGates.map(({ consequence }) => consequence)),
    cautions.estimate,
  ];
}
