import { Suspense, useEffect, useRef, type ReactNode, type RefObject } from 'react';
import { useKeptFocus } from './parts/kept-focus.js';
import { Notice } from './parts/notice.js';
import { useOpenForPrint } from './parts/open-for-print.js';
import { ReachBanner } from './parts/reach-banner.js';
import { ReloadNotice } from './parts/reload-notice.js';
import { TitleBlock } from './parts/title-block.js';
import { ViewLink } from './parts/view-link.js';
import { ViewsNav } from './parts/views-nav.js';
import type { Address } from './state/address.js';
import { DeskContext } from './state/desk-context.js';
import type { DeskContent } from './state/desk-content.js';
import { useDesk, type DeskState } from './state/use-desk.js';
import { strings } from './strings.data.js';
import { viewOf } from './views.js';

/** The whole page: title block, the seven views, and whatever there is to show below them. */
export function Desk(): ReactNode {
  const desk = useDesk();
  const { address, content } = desk;
  const main = useRef<HTMLElement>(null);
  useOpenForPrint();
  useKeptFocus(main, content);
  useViewFocus(main, address);
  useEffect(() => {
    document.title = titleOf(address, content);
  }, [address, content]);
  return (
    <DeskContext value={desk}>
      <a className="skip" href="#main">
        {strings.skip}
      </a>
      <TitleBlock content={content} goTo={desk.goTo} />
      <ViewsNav />
      <ReachBanner onBack={desk.refresh} />
      <main id="main" ref={main} tabIndex={-1}>
        <ReloadNotice key={address.view}>
          <Suspense fallback={<p className="loading">{strings.states.loadingView}</p>}>
            <Body desk={desk} />
          </Suspense>
        </ReloadNotice>
      </main>
    </DeskContext>
  );
}

/** A newly opened view begins at its top, for eyes and for a screen reader. */
function useViewFocus(main: RefObject<HTMLElement | null>, { view }: Address): void {
  const before = useRef(view);
  useEffect(() => {
    if (before.current === view) return;
    before.current = view;
    window.scrollTo(0, 0);
    main.current?.focus({ preventScroll: true });
  }, [main, view]);
}

function Body({ desk }: { readonly desk: DeskState }): ReactNode {
  const { address, content, goTo, reload } = desk;
  if (content.kind === 'missing-plan') {
    return <MissingPlan onShowNewest={() => goTo({ campusId: null, planId: null })} />;
  }
  if (content.kind === 'plan' || content.kind === 'no-plan-yet' || content.kind === 'no-campus') {
    const view = viewOf(address.view, content);
    if (view !== null) return view;
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
  readonly content: DeskContent;
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
  if (content.kind === 'offline') {
    return (
      <Notice heading={words.offline} remedy={words.offlineRemedy}>
        {retry}
      </Notice>
    );
  }
  return (
    <Notice heading={words.noCampus} remedy={words.noCampusRemedy}>
      <p>
        <ViewLink to={{ view: 'set-up' }}>{words.toSetUp}</ViewLink>
      </p>
      {retry}
    </Notice>
  );
}

function titleOf({ view }: Address, content: DeskContent): string {
  const whose = 'campus' in content ? content.campus.name : strings.productName;
  return `${strings.views.names[view]} — ${whose}`;
}
