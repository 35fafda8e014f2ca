import { useCallback, useState, type ReactNode } from 'react';
import type { NextYear, PlanOverview } from '#explain/overview/plan-overview.js';
import { api, type CampusFile, type Decision, type NewDecision } from '../../api.js';
import { momentInWords } from '../../format/numbers.js';
import { DataTable, type Column } from '../../parts/data-table.js';
import { FailureNote } from '../../parts/failure-note.js';
import { Section } from '../../parts/section.js';
import { ViewLink } from '../../parts/view-link.js';
import type { PlanContent } from '../../state/desk-context.js';
import { useKept } from '../../state/use-kept.js';
import { failureOf, useLoaded, type Failure } from '../../state/use-loaded.js';
import { strings } from '../../strings.data.js';
import type { Wish } from '../plan/wish.js';
import { shortYear, yearsOf } from '../plan/years.js';
import { DecisionForm } from './decision-form.js';

const words = strings.decision;

/** Who decided what, why, and who disagreed: recorded beside the plan, and never changed. */
export function DecisionRecord({ content }: { readonly content: PlanContent }): ReactNode {
  const { campus, plan, overview } = content;
  const { next } = overview;
  const loadCampus = useCallback(() => api.campus(campus.id), [campus.id]);
  const [file] = useLoaded(loadCampus);
  const years = file.kind === 'loaded' ? yearsOf(file.value.file) : [];
  const [, keepWish] = useKept<Wish>(`change of ${campus.id}`);
  const [unlike, setUnlike] = useState<NewDecision | null>(null);
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
        const isUnlike = isApprovedElse(decision, next.sites);
        setUnlike(isUnlike ? decision : null);
        if (isUnlike) keepWish(wishOf(decision, years));
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
        next={next}
        others={othersOf(file.kind === 'loaded' ? file.value.file : null, overview)}
        kept={kept}
        isSaving={saved === 'saving'}
        onKeep={keep}
        onRecord={record}
      />
      <div role="status">{saved === 'yes' && <Recorded unlike={unlike} />}</div>
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

/** That it is recorded; and where it is not what the plan says, how the plan comes to follow. */
function Recorded({ unlike }: { readonly unlike: NewDecision | null }): ReactNode {
  return (
    <>
      <p>{words.recorded}</p>
      {unlike !== null && (
        <p>
          {words.unlike(unlike.site, unlike.year)}{' '}
          <ViewLink to={{ view: 'plan' }}>{words.toFollow}</ViewLink>
        </p>
      )}
    </>
  );
}

/** Candidates that the plan does not propose for next year. */
function othersOf(file: CampusFile | null, { next }: PlanOverview): (readonly [string, string])[] {
  const proposed = new Set(next.sites.map(({ site }) => site));
  return (file?.candidateSites ?? [])
    .filter(({ id }) => !proposed.has(id))
    .map(({ id, name }) => [id, name] as const);
}

function isApprovedElse({ site, verdict }: NewDecision, proposed: NextYear['sites']): boolean {
  return verdict === 'approved' && !proposed.some((p) => p.site === site);
}

/** What makes the plan follow a decision: the site fixed to its year, for the reason given. */
function wishOf({ site, year, reason }: NewDecision, years: readonly string[]): Wish {
  return { site, kind: 'fixed', year: years.find((y) => shortYear(y) === year) ?? '', reason };
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
