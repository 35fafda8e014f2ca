import { useCallback, useState, type ReactNode } from 'react';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { api, type PlanSummary } from '../../api.js';
import { momentInWords } from '../../format/numbers.js';
import { DataTable, type Column } from '../../parts/data-table.js';
import { FailureNote } from '../../parts/failure-note.js';
import { Section } from '../../parts/section.js';
import type { PlanContent } from '../../state/desk-context.js';
import { useLoaded } from '../../state/use-loaded.js';
import { strings } from '../../strings.data.js';
import { planChanges } from '../plan/plan-changes.js';

const words = strings.whatIf;

const columns: readonly Column[] = [
  { head: strings.changes.what, kind: 'name' },
  { head: words.thisPlan, kind: 'words' },
  { head: words.otherPlan, kind: 'words' },
];

/** Two plans of one campus, told only where they differ. */
export function ComparePlans({ content }: { readonly content: PlanContent }): ReactNode {
  const { plans, plan, overview } = content;
  const others = plans.filter(({ id }) => id !== plan.id);
  const [chosen, setChosen] = useState('');
  return (
    <Section id="compare" heading={strings.sections.compare}>
      {others.length === 0 ? (
        <p>{words.onlyPlan}</p>
      ) : (
        <>
          <label className="field">
            {words.compareWith}
            <select value={chosen} onChange={(event) => setChosen(event.target.value)}>
              <option value="">{words.choosePlan}</option>
              {others.map((other) => (
                <option key={other.id} value={other.id}>
                  {planInWords(other)}
                </option>
              ))}
            </select>
          </label>
          {chosen !== '' && <Differences key={chosen} overview={overview} otherId={chosen} />}
        </>
      )}
    </Section>
  );
}

function planInWords({ campusVersion, origin, solvedAt }: PlanSummary): string {
  return words.planOf[origin](momentInWords(solvedAt), campusVersion);
}

interface DifferencesProps {
  readonly overview: PlanOverview;
  readonly otherId: string;
}

function Differences({ overview, otherId }: DifferencesProps): ReactNode {
  const load = useCallback(() => api.overview(otherId), [otherId]);
  const [loaded] = useLoaded(load);
  if (loaded.kind === 'loading') return <p className="quiet">{strings.states.loadingView}</p>;
  if (loaded.kind === 'failed') return <FailureNote failure={loaded.failure} />;
  const changes = planChanges(overview, loaded.value);
  if (changes.length === 0) return <p role="status">{strings.changes.nothing}</p>;
  return (
    <DataTable
      caption={words.compareCaption}
      columns={columns}
      rows={changes.map((row) => ({ key: row.what, cells: [row.what, row.before, row.after] }))}
    />
  );
}
