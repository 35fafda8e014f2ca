import { useState, type ReactNode } from 'react';
import { api, type ImportApplied, type ImportPreview } from '../../api.js';
import { listInWords } from '../../format/numbers.js';
import { FailureNote } from '../../parts/failure-note.js';
import { ProblemList } from '../../parts/problem-list.js';
import { Section } from '../../parts/section.js';
import { useDeskState, type CampusContent } from '../../state/desk-context.js';
import { failureOf, type Failure } from '../../state/use-loaded.js';
import { strings } from '../../strings.data.js';
import { BroughtPlans, PlansInBundle } from './brought-plans.js';
import { ImportRows } from './import-rows.js';

const words = strings.setUp;

type State =
  | { readonly kind: 'idle' | 'reading' }
  | { readonly kind: 'preview'; readonly file: File; readonly preview: ImportPreview }
  | { readonly kind: 'applied'; readonly applied: ImportApplied }
  | { readonly kind: 'failed'; readonly failure: Failure };

/** Sites from a file of another program: a dry run that reports each row, then all of it or nothing. */
export function ImportSites({ content }: { readonly content: CampusContent }): ReactNode {
  const { campus } = content;
  const { refresh } = useDeskState();
  const [state, setState] = useState<State>({ kind: 'idle' });
  const act = (doing: Promise<State>): void => {
    setState({ kind: 'reading' });
    doing.then(setState, (error: unknown) =>
      setState({ kind: 'failed', failure: failureOf(error) }),
    );
  };
  const dryRun = async (file: File): Promise<State> => ({
    kind: 'preview',
    file,
    preview: await api.dryRun(campus.id, file),
  });
  const apply = async (file: File, token: string): Promise<State> => {
    const applied = await api.applyImport({ id: campus.id, token }, file);
    refresh();
    return { kind: 'applied', applied };
  };
  return (
    <Section id="import" heading={words.importSites}>
      <ChooseFile campusId={campus.id} onFile={(file) => act(dryRun(file))} />
      <div role="status" className="import-status">
        {state.kind === 'reading' && <p>{words.dryRunning}</p>}
        {state.kind === 'preview' && <Outcome name={state.file.name} preview={state.preview} />}
        {state.kind === 'applied' && <p>{appliedInWords(state.applied)}</p>}
        {state.kind === 'failed' && <FailureNote failure={state.failure} />}
      </div>
      {state.kind === 'applied' && <BroughtPlans plans={state.applied.broughtPlans} />}
      {state.kind === 'preview' && (
        <>
          <PlansInBundle plans={state.preview.report.plans} />
          <ProblemList problems={state.preview.report.problems} />
          {state.preview.report.canApply && (
            <button
              type="button"
              className="primary"
              onClick={() => act(apply(state.file, state.preview.token))}
            >
              {state.preview.report.format === 'bundle' ? words.applyBundle : words.apply}
            </button>
          )}
          <ImportRows rows={state.preview.report.rows} />
        </>
      )}
    </Section>
  );
}

function appliedInWords({ campusVersion, report }: ImportApplied): string {
  return report.format === 'bundle'
    ? words.appliedBundle(campusVersion)
    : words.applied(campusVersion);
}

interface ChooseFileProps {
  readonly campusId: string;
  readonly onFile: (file: File) => void;
}

function ChooseFile({ campusId, onFile }: ChooseFileProps): ReactNode {
  return (
    <>
      <p>{words.importLead}</p>
      <p>
        {words.importColumns}{' '}
        {(['csv', 'xlsx', 'geojson'] as const).map((format) => (
          <span key={format}>
            <a href={api.exportPath(campusId, format, null)} download>
              {words.exports[format]}
            </a>{' '}
          </span>
        ))}
      </p>
      <p>
        {words.bundle.keep}{' '}
        <a href={api.exportPath(campusId, 'bundle', null)} download>
          {words.bundle.download}
        </a>
      </p>
      <label className="field stacked">
        {words.importFile}
        <input
          type="file"
          accept=".csv,.xlsx,.geojson,.json,.zip"
          onChange={(event) => {
            const file = event.target.files?.[0];
            if (file !== undefined) onFile(file);
            // The same file, mended, can be chosen again.
            event.target.value = '';
          }}
        />
      </label>
    </>
  );
}

interface OutcomeProps {
  readonly name: string;
  readonly preview: ImportPreview;
}

const order = ['new', 'changed', 'unchanged', 'removed', 'rejected'] as const;

function Outcome({ name, preview: { report } }: OutcomeProps): ReactNode {
  const counts = order.filter((kind) => report.counts[kind] > 0);
  const told = counts.map((kind) => words.count[kind](report.counts[kind]));
  return (
    <p>
      {words.dryRunDone(name, listInWords(told.length === 0 ? [words.count.new(0)] : told))}{' '}
      {report.canApply ? words.canApply : words.cannotApply}
    </p>
  );
}
