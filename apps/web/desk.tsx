import { useCallback, useEffect, useRef, type ReactNode } from 'react';
import { NoPlanPage } from './no-plan-page.js';
import { Contents } from './parts/contents.js';
import { useKeptFocus } from './parts/kept-focus.js';
import { Notice } from './parts/notice.js';
import { useOpenForPrint } from './parts/open-for-print.js';
import { TitleBlock } from './parts/title-block.js';
import { PlanPage } from './plan-page.js';
import type { DeskContent } from './state/desk-content.js';
import { useDesk, type DeskState } from './state/use-desk.js';
import { strings } from './strings.data.js';

/** The whole page: title block, and whatever there is to show below it. */
export function Desk(): ReactNode {
  const desk = useDesk();
  const { content } = desk;
  const main = useRef<HTMLElement>(null);
  useOpenForPrint();
  useKeptFocus(main, content);
  useEffect(() => {
    document.title = titleOf(content);
  }, [content]);
  return (
    <>
      <a className="skip" href="#main">
        {strings.skip}
      </a>
      <TitleBlock content={content} goTo={desk.goTo} />
      {content.kind === 'plan' && <Contents />}
      <main id="main" ref={main} tabIndex={-1}>
        <Body desk={desk} />
      </main>
    </>
  );
}

function Body({ desk: { content, goTo, reload } }: { readonly desk: DeskState }): ReactNode {
  const campusId = 'campus' in content ? content.campus.id : null;
  const showPlan = useCallback((planId: string) => goTo({ campusId, planId }), [goTo, campusId]);
  if (content.kind === 'plan') {
    return <PlanPage key={content.campus.id} content={content} onShowPlan={showPlan} />;
  }
  if (content.kind === 'no-plan-yet') {
    return <NoPlanPage key={content.campus.id} content={content} onShowPlan={showPlan} />;
  }
  if (content.kind === 'missing-plan') {
    return <MissingPlan onShowNewest={() => goTo({ campusId: null, planId: null })} />;
  }
  return <Waiting content={content} onRetry={reload} />;
}

function MissingPlan({ onShowNewest }: { readonly onShowNewest: () => void }): ReactNode {
  const { missingPlan, missingPlanRemedy, showNewest } = strings.states;
  return (
    <Notice heading={missingPlan} remedy={missingPlanRemedy}>
      <button type="button" className="primary" onClick={onShowNewest}>
        {showNewest}
      </button>
    </Notice>
  );
}

interface WaitingProps {
  readonly content: Extract<DeskContent, { kind: 'loading' | 'offline' | 'failed' | 'no-campus' }>;
  readonly onRetry: () => void;
}

function Waiting({ content, onRetry }: WaitingProps): ReactNode {
  const words = strings.states;
  if (content.kind === 'loading') return <h1 className="notice loading">{words.loading}</h1>;
  const retry = (
    <button type="button" className="primary" onClick={onRetry}>
      {words.retry}
    </button>
  );
  if (content.kind === 'failed') {
    return (
      <Notice heading={words.failed} remedy={words.failedRemedy} refusal={content.refusal}>
        {retry}
      </Notice>
    );
  }
  const [heading, remedy] =
    content.kind === 'offline'
      ? [words.offline, words.offlineRemedy]
      : [words.noCampus, words.noCampusRemedy];
  return (
    <Notice heading={heading} remedy={remedy}>
      {retry}
    </Notice>
  );
}

function titleOf(content: DeskContent): string {
  return 'campus' in content
    ? `${content.campus.name} — ${strings.productName}`
    : strings.productName;
}
