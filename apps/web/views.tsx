import { lazy, type ReactNode } from 'react';
import { NoPlanPage } from './no-plan-page.js';
import type { View } from './state/address.js';
import type { CampusContent, PlanContent } from './state/desk-context.js';
import type { DeskContent } from './state/desk-content.js';
import { HomeView } from './views/home/home-view.js';

// Each view comes when it is opened; home is there at once.
const SitesView = lazy(() => import('./views/sites/sites-view.js'));
const PlanView = lazy(() => import('./views/plan/plan-view.js'));
const NextView = lazy(() => import('./views/next/next-view.js'));
const WhatIfView = lazy(() => import('./views/what-if/what-if-view.js'));
const MeetingView = lazy(() => import('./views/meeting/meeting-view.js'));
const SetUpView = lazy(() => import('./views/set-up/set-up-view.js'));

type Shown = CampusContent | Extract<DeskContent, { kind: 'no-campus' }>;

/** The view of what is on the desk; null where it needs a campus and there is none. */
export function viewOf(view: View, content: Shown): ReactNode {
  if (view === 'set-up') return <SetUpView content={content} />;
  if (content.kind === 'no-campus') return null;
  if (view === 'sites') return <SitesView key={content.campus.id} content={content} />;
  if (content.kind === 'no-plan-yet') {
    return <NoPlanPage key={content.campus.id} content={content} />;
  }
  return planView(view, content);
}

function planView(view: Exclude<View, 'set-up' | 'sites'>, content: PlanContent): ReactNode {
  switch (view) {
    case 'home':
      return <HomeView content={content} />;
    case 'plan':
      return <PlanView key={content.campus.id} content={content} />;
    case 'next':
      return <NextView key={content.plan.id} content={content} />;
    case 'what-if':
      return <WhatIfView key={content.plan.id} content={content} />;
    case 'meeting':
      return <MeetingView content={content} />;
  }
}
