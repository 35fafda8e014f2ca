import { useCallback, useState, type ReactNode } from 'react';
import { api, type Problem } from '../../api.js';
import { FailureNote } from '../../parts/failure-note.js';
import { ProblemList } from '../../parts/problem-list.js';
import { Section } from '../../parts/section.js';
import { ViewLink } from '../../parts/view-link.js';
import { useDeskState, type CampusContent } from '../../state/desk-context.js';
import { useKept } from '../../state/use-kept.js';
import { failureOf, useLoaded, type Failure } from '../../state/use-loaded.js';
import { strings } from '../../strings.data.js';
import { newSite, noFacts, type SixFacts } from './new-site.js';
import { SixFactsForm } from './six-facts-form.js';

const words = strings.setUp;

type State =
  | { readonly kind: 'idle' | 'saving' }
  | { readonly kind: 'saved'; readonly id: string; readonly warnings: readonly Problem[] }
  | { readonly kind: 'failed'; readonly failure: Failure };

/** One site with the six facts that are enough to plan. */
export function AddSite({ content }: { readonly content: CampusContent }): ReactNode {
  const { campus } = content;
  const { refresh } = useDeskState();
  const load = useCallback(() => api.campus(campus.id), [campus]);
  const [loaded] = useLoaded(load);
  const [kept, keep] = useKept<SixFacts>(`new site of ${campus.id}`);
  const [state, setState] = useState<State>({ kind: 'idle' });
  const save = async (facts: SixFacts): Promise<void> => {
    if (loaded.kind !== 'loaded') return;
    setState({ kind: 'saving' });
    try {
      const site = newSite(facts, loaded.value.file, words.newSite);
      const change = { basedOn: campus.version, site: { ...site } };
      const { warnings } = await api.saveSite({ id: campus.id, site: site.id }, change);
      const own = warnings.filter(({ record }) => record === `site ${site.id}`);
      setState({ kind: 'saved', id: site.id, warnings: own });
      keep(null);
      refresh();
    } catch (error) {
      setState({ kind: 'failed', failure: failureOf(error) });
    }
  };
  return (
    <Section id="add-site" heading={words.addSite}>
      <p>{words.addSiteLead}</p>
      {loaded.kind === 'failed' && <FailureNote failure={loaded.failure} />}
      {loaded.kind === 'loaded' && (
        <SixFactsForm
          file={loaded.value.file}
          facts={kept ?? noFacts}
          isSaving={state.kind === 'saving'}
          onFacts={keep}
          onSave={(facts) => void save(facts)}
        />
      )}
      <div role="status">
        {state.kind === 'saved' && (
          <p>
            {words.siteAdded(state.id)}{' '}
            <ViewLink to={{ view: 'sites', siteId: state.id }}>{words.toSite}</ViewLink>
          </p>
        )}
        {state.kind === 'failed' && <FailureNote failure={state.failure} />}
      </div>
      {state.kind === 'saved' && <ProblemList problems={state.warnings} />}
    </Section>
  );
}
