import { siteDossier } from '#explain/documents/dossier/compute-dossier.js';
import { campusPlaces } from '#explain/documents/long-range/compute-places.js';
import { staffingRequest } from '#explain/documents/staffing/compute-staffing.js';
import { workYear } from '#explain/documents/work-year/compute-work-year.js';
import { administrationBrief } from '#report/administration-brief/administration-brief.js';
import type { Edition } from '#report/document/edition.js';
import type { PlanDocument } from '#report/document/plan-document.js';
import { longRangePlan } from '#report/long-range-plan/long-range-plan.js';
import { materialsOrder } from '#report/materials-order/materials-order.js';
import { siteDossierDocument } from '#report/site-dossier/site-dossier.js';
import { staffingRequestDocument } from '#report/staffing-request/staffing-request.js';
import { workCalendar } from '#report/work-calendar/work-calendar.js';
import { documentKinds, type DocumentKind, type DocumentWish } from '../ports/document-writer.js';
import type { DocumentSource } from './document-source.js';

interface Maker {
  readonly title: string;
  /** `site`: there is one for each candidate. */
  readonly of: 'plan' | 'site';
  readonly make: (source: DocumentSource, edition: Edition, site: string) => PlanDocument;
}

const MAKERS: Readonly<Record<DocumentKind, Maker>> = {
  'administration-brief': {
    title: 'Administration brief',
    of: 'plan',
    make: ({ overview }, edition) => administrationBrief(overview, edition),
  },
  'long-range-plan': {
    title: 'Long-range plan',
    of: 'plan',
    make: ({ overview, campus, ground }, edition) =>
      longRangePlan({ overview, campus, places: campusPlaces(ground()) }, edition),
  },
  'staffing-request': {
    title: 'Grounds staffing request',
    of: 'plan',
    make: ({ overview, ground }, edition) =>
      staffingRequestDocument(overview, staffingRequest(ground(), overview.seasons), edition),
  },
  'site-dossier': {
    title: 'Site dossier',
    of: 'site',
    make: ({ overview, ground }, edition, site) =>
      siteDossierDocument(overview, siteDossier(ground(), site), edition),
  },
  'materials-order': {
    title: 'Materials order',
    of: 'plan',
    make: ({ overview, ground }, edition) => materialsOrder(overview, workYear(ground()), edition),
  },
  'work-calendar': {
    title: 'Work calendar',
    of: 'plan',
    make: ({ overview, ground }, edition) => workCalendar(overview, workYear(ground()), edition),
  },
};

/** The model of one document of a plan. Throws for a document that the plan does not have. */
export function documentOf(
  source: DocumentSource,
  wish: DocumentWish,
  edition: Edition,
): PlanDocument {
  if (!hasDocument(source, wish)) throw new RangeError(`no document ${fileNameOf(wish)}`);
  return MAKERS[wish.kind].make(source, edition, wish.site ?? '');
}

export function titleOf({ kind, site }: DocumentWish): string {
  return site === undefined ? MAKERS[kind].title : `${MAKERS[kind].title}, ${site}`;
}

/** `site-dossier-TVU-19.pdf` */
export function fileNameOf({ kind, site }: DocumentWish): string {
  return site === undefined ? `${kind}.pdf` : `${kind}-${site}.pdf`;
}

/** The wish that a file name stands for. Null: no document of the plan has this name. */
export function wishOf(source: DocumentSource, fileName: string): DocumentWish | null {
  const wishes = documentKinds.flatMap((kind): DocumentWish[] =>
    MAKERS[kind].of === 'plan'
      ? [{ kind }]
      : source.campus.candidates.map(({ id }) => ({ kind, site: id })),
  );
  return wishes.find((wish) => fileNameOf(wish) === fileName) ?? null;
}

/** Each kind once; of those about a site, one for each site that is prepared in the first year with any. */
export function usualDocuments(source: DocumentSource): DocumentWish[] {
  return documentKinds.flatMap((kind): DocumentWish[] =>
    MAKERS[kind].of === 'plan' ? [{ kind }] : firstSites(source).map((site) => ({ kind, site })),
  );
}

/** Documents of one site: those of the kinds that are about one. */
export function siteDocuments(site: string): DocumentWish[] {
  return documentKinds.filter((kind) => MAKERS[kind].of === 'site').map((kind) => ({ kind, site }));
}

function hasDocument({ campus }: DocumentSource, { kind, site }: DocumentWish): boolean {
  return MAKERS[kind].of === 'plan'
    ? site === undefined
    : campus.candidates.some(({ id }) => id === site);
}

function firstSites({ plan }: DocumentSource): string[] {
  const { placements } = plan.decisions;
  const first = Math.min(...placements.map(({ year }) => year));
  return placements.filter(({ year }) => year === first).map(({ site }) => site);
}
