/** The seven views, in the order in which they are listed. */
export const VIEWS = ['home', 'sites', 'plan', 'next', 'what-if', 'meeting', 'set-up'] as const;
export type View = (typeof VIEWS)[number];

/** What the page's address names, so that a link or a reload comes back to the same place. */
export interface Address {
  readonly view: View;
  /** Null: the first campus that has a plan. */
  readonly campusId: string | null;
  /** Null: the newest plan. */
  readonly planId: string | null;
  /** The site that is opened, by its id in the campus file. */
  readonly siteId: string | null;
}

export function readAddress(): Address {
  const query = new URLSearchParams(window.location.search);
  const view = query.get('view');
  return {
    view: VIEWS.find((one) => one === view) ?? 'home',
    campusId: query.get('campus'),
    planId: query.get('plan'),
    siteId: query.get('site'),
  };
}

/** The query that leads to an address; the bare page for the home view of the newest plan. */
export function addressQuery({ view, campusId, planId, siteId }: Address): string {
  const query = new URLSearchParams();
  if (view !== 'home') query.set('view', view);
  if (campusId !== null) query.set('campus', campusId);
  if (planId !== null) query.set('plan', planId);
  if (siteId !== null) query.set('site', siteId);
  return query.size === 0 ? window.location.pathname : `?${query.toString()}`;
}
