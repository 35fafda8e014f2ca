/** What the page's address names, so that a link or a reload comes back to the same plan. */
export interface Address {
  readonly campusId: string | null;
  readonly planId: string | null;
}

export function readAddress(): Address {
  const query = new URLSearchParams(window.location.search);
  return { campusId: query.get('campus'), planId: query.get('plan') };
}

/** The query that leads to an address; empty for the newest plan of the first campus. */
export function addressQuery({ campusId, planId }: Address): string {
  const query = new URLSearchParams();
  if (campusId !== null) query.set('campus', campusId);
  if (planId !== null) query.set('plan', planId);
  return query.size === 0 ? window.location.pathname : `?${query.toString()}`;
}
