import { useCallback, useState, type ReactNode } from 'react';
import { api, type Decision, type NewDecision } from '../../api.js';
import { momentInWords } from '../../format/numbers.js';
import { DataTable, type Column } from '../../parts/data-table.js';
import { FailureNote } from '../../parts/failure-note.js';
import { Section } from '../../parts/section.js';
import type { PlanContent } from '../../state/desk-context.js';
import { useKept } from '../../state/use-kept.js';
import { failureOf, useLoaded, type Failure } from '../../state/use-loaded.js';
import { strings } from '../../strings.data.js';
import { DecisionForm } from './decision-form.js';

const words = strings.decision;

/** Who decided what, why, and who disagreed: recorded beside the plan, and never changed. */
export function DecisionRecord({ content }: { readonly content: PlanContent }): ReactNode {
  const { campus, plan, overview } = content;
  const load = useCallback(() => api.decisions(campus.id), [campus.id]);
  const [loaded, reload] = useLoaded(load);
  const [kept, keep] = useKept<NewDecision>(`decision on ${plan.id}`);
  const [saved, setSaved] = useState<'no' | 'saving' | 'yes'>('no');
  const [failure, setFailure] = useState<Failure | null>(null);
  const record = (decision: NewDecision): void => {
    setSaved('saving');
    setFailure(null);
    api.recordDecision(plan.id, decision).then(
      () => {
        setSaved('yes');
        keep(null);
        reload();
      },
      (error: unknown) => {
        setSaved('no');
        setFailure(failureOf(error));
      },
    );
  };
  return (
    <Section id="decision" heading={strings.sections.decision}>
      <p>{words.lead}</p>
      <DecisionForm
        next={overview.next}
        kept={kept}
        isSaving={saved === 'saving'}
        onKeep={keep}
        onRecord={record}
      />
      <div role="status">{saved === 'yes' && <p>{words.recorded}</p>}</div>
      {failure !== null && (
        <div role="alert">
          <p>{words.notRecorded}</p>
          <FailureNote failure={failure} />
        </div>
      )}
      {loaded.kind === 'failed' && <FailureNote failure={loaded.failure} />}
      {loaded.kind === 'loaded' && <Decisions decisions={loaded.value} />}
    </Section>
  );
}

const columns: readonly Column[] = [
  { head: words.what, kind: 'name' },
  { head: words.verdict, kind: 'text' },
  { head: words.by, kind: 'words' },
  { head: words.reason, kind: 'words' },
  { head: words.dissent, kind: 'words' },
  { head: words.when, kind: 'text' },
];

function Decisions({ decisions }: { readonly decisions: readonly Decision[] }): ReactNode {
  if (decisions.length === 0) return <p className="quiet">{words.none}</p>;
  return (
    <DataTable
      caption={words.caption}
      columns={columns}
      rows={decisions.map((row) => ({
        key: row.id,
        cells: [
          words.about(row.site, row.year),
          words.verdicts[row.verdict],
          row.decidedBy,
          row.reason,
          row.dissent === '' ? words.noDissent : row.dissent,
          momentInWords(row.decidedAt),
        ],
      }))}
    />
  );
}
