import { useCallback, useState, type ReactNode } from 'react';
import { api, type SiteEstimates, type TypeEstimate } from '../../../api.js';
import { dateInWords } from '../../../format/numbers.js';
import { DataTable, type Column } from '../../../parts/data-table.js';
import { FailureNote } from '../../../parts/failure-note.js';
import { useLoaded } from '../../../state/use-loaded.js';
import { strings } from '../../../strings.data.js';
import { EstimateTree } from './estimate-tree.js';

const words = strings.record;

interface SiteEstimateProps {
  readonly campusId: string;
  /** Version of the campus: a saved change is estimated anew. */
  readonly version: number;
  readonly site: string;
}

/** The estimate of a site, every number open to those it was made of. */
export function SiteEstimate({ campusId, version, site }: SiteEstimateProps): ReactNode {
  const load = useCallback(
    () => api.estimates(campusId, site).then((estimates) => ({ estimates, version })),
    [campusId, site, version],
  );
  const [loaded] = useLoaded(load);
  return (
    <section aria-labelledby="record-estimate">
      <h3 id="record-estimate">{words.estimate}</h3>
      {loaded.kind === 'loading' && <p className="quiet">{strings.states.loadingView}</p>}
      {loaded.kind === 'failed' && <FailureNote failure={loaded.failure} />}
      {loaded.kind === 'loaded' && (
        <>
          <Types estimates={loaded.value.estimates} />
          <Suitability estimates={loaded.value.estimates} />
          <OtherGates estimates={loaded.value.estimates} />
          <p className="quiet">{loaded.value.estimates.notes.join(' ')}</p>
        </>
      )}
    </section>
  );
}

function Types({
  estimates: { estimates, pricesOf },
}: {
  readonly estimates: SiteEstimates;
}): ReactNode {
  const [chosen, setChosen] = useState(estimates[0]?.buildType ?? '');
  const shown = estimates.find(({ buildType }) => buildType === chosen) ?? estimates[0];
  return (
    <>
      <p>{words.estimateLead(pricesOf)}</p>
      {estimates.length > 1 && (
        <label className="field">
          {words.asType}
          <select value={shown?.buildType} onChange={(event) => setChosen(event.target.value)}>
            {estimates.map(({ buildType, name }) => (
              <option key={buildType} value={buildType}>
                {name}
              </option>
            ))}
          </select>
        </label>
      )}
      {shown !== undefined && <Estimate key={shown.buildType} estimate={shown} />}
    </>
  );
}

/** How a candidate is suited, before gates and plan. */
function Suitability({
  estimates: { suitability },
}: {
  readonly estimates: SiteEstimates;
}): ReactNode {
  if (suitability.length === 0) return null;
  return (
    <>
      <h4>{words.suitability}</h4>
      <EstimateTree nodes={suitability} />
    </>
  );
}

const gateColumns: readonly Column[] = [
  { head: words.gate, kind: 'head' },
  { head: words.status, kind: 'text' },
  { head: words.measured, kind: 'words' },
  { head: words.clearedBy, kind: 'words' },
];

/** Gates that nobody stated, and what the measures say beside those that are. */
function OtherGates({ estimates: { gates } }: { readonly estimates: SiteEstimates }): ReactNode {
  const told = gates.filter(({ basis, measured }) => basis !== 'stated' || measured !== null);
  if (told.length === 0) return null;
  return (
    <DataTable
      caption={words.otherGatesCaption}
      columns={gateColumns}
      rows={told.map((gate, index) => ({
        key: `${gate.kind} ${index}`,
        cells: [
          gateName(gate.kind),
          gate.basis === 'stated' ? words.statedAbove : words.statuses[gate.status],
          [gate.measured ?? gate.note, ...(gate.asOf === null ? [] : [asOf(gate.asOf)])].join(' '),
          [gate.clearedBy, gate.ask === '' ? '' : words.ask(gate.ask)].join(' ').trim(),
        ],
      }))}
    />
  );
}

function gateName(kind: string): string {
  const names: Readonly<Record<string, string>> = words.gateNames;
  return names[kind] ?? kind;
}

function asOf(date: string): string {
  return words.asOf(dateInWords(date));
}

const sections = ['takeoff', 'hours', 'money', 'water', 'benefits'] as const;

function Estimate({ estimate }: { readonly estimate: TypeEstimate }): ReactNode {
  return (
    <>
      {estimate.findings.length > 0 && (
        <ul className="problems">
          {estimate.findings.map((finding) => (
            <li key={`${finding.field} ${finding.problem}`}>
              {finding.problem} {finding.remedy}
            </li>
          ))}
        </ul>
      )}
      <div className="estimate">
        {sections.map((section) => (
          <div key={section} className={`is-${section}`}>
            <h4>{words.estimateSections[section]}</h4>
            <EstimateTree nodes={estimate.sections[section]} />
          </div>
        ))}
      </div>
    </>
  );
}
