import { useCallback, type ReactNode } from 'react';
import { api, type PlanDocument } from '../api.js';
import { FailureNote } from '../parts/failure-note.js';
import { Section } from '../parts/section.js';
import { useLoaded } from '../state/use-loaded.js';
import { strings } from '../strings.data.js';

const words = strings.documents;

/** The documents to take to a meeting: those of the whole plan first, then those of single sites. */
export function Documents({ planId }: { readonly planId: string }): ReactNode {
  const load = useCallback(() => api.documents(planId), [planId]);
  const [loaded] = useLoaded(load);
  return (
    <Section id="documents" heading={strings.sections.documents}>
      <p className="quiet">{words.briefNote}</p>
      {loaded.kind === 'loading' && <p className="quiet">{strings.states.loadingView}</p>}
      {loaded.kind === 'failed' && <FailureNote failure={loaded.failure} />}
      {loaded.kind === 'loaded' && (
        <>
          <List documents={loaded.value.filter(({ site }) => site === null)} />
          <OfSites documents={loaded.value.filter(({ site }) => site !== null)} />
        </>
      )}
    </Section>
  );
}

function List({ documents }: { readonly documents: readonly PlanDocument[] }): ReactNode {
  return (
    <ul className="downloads">
      {documents.map(({ fileName, title, path }) => (
        <li key={fileName}>
          <a href={path} download={fileName}>
            {words.asPdf(title)}
          </a>
        </li>
      ))}
    </ul>
  );
}

function OfSites({ documents }: { readonly documents: readonly PlanDocument[] }): ReactNode {
  if (documents.length === 0) return null;
  return (
    <details>
      <summary>{words.ofSites(documents.length)}</summary>
      <List documents={documents} />
    </details>
  );
}
