import type { ReactNode } from 'react';
import { api } from '../api.js';
import { Section } from '../parts/section.js';
import { strings } from '../strings.data.js';

/** The documents to take to a meeting. */
export function Documents({ planId }: { readonly planId: string }): ReactNode {
  return (
    <Section id="documents" heading={strings.sections.documents}>
      <p>
        <a className="download" href={api.administrationBriefPath(planId)} download>
          {strings.documents.brief}
        </a>
      </p>
      <p className="quiet">{strings.documents.briefNote}</p>
    </Section>
  );
}
