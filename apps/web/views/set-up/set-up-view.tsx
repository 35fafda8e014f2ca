import type { ReactNode } from 'react';
import { Unknowns } from '../../sections/unknowns.js';
import type { CampusContent } from '../../state/desk-context.js';
import type { DeskContent } from '../../state/desk-content.js';
import { strings } from '../../strings.data.js';
import { AddSite } from './add-site.js';
import { ImportSites } from './import-sites.js';
import { StartCampus } from './start-campus.js';
import './set-up.css';

const words = strings.setUp;

interface SetUpViewProps {
  readonly content: CampusContent | Extract<DeskContent, { kind: 'no-campus' }>;
}

/** The first ten minutes: a campus, its sites, what must be known to plan, and what to find out. */
export default function SetUpView({ content }: SetUpViewProps): ReactNode {
  return (
    <>
      <h1 className="view-heading">{words.heading}</h1>
      <p>{words.lead}</p>
      <StartCampus content={content} />
      {content.kind !== 'no-campus' && (
        <>
          <ImportSites key={`import ${content.campus.id}`} content={content} />
          <AddSite key={`add ${content.campus.id}`} content={content} />
        </>
      )}
      {content.kind === 'plan' && <Unknowns overview={content.overview} />}
    </>
  );
}
