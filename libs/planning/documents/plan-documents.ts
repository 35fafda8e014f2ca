import { siteDossier } from '#explain/documents/dossier/compute-dossier.js';
import { giftPackages } from '#explain/documents/gifts/compute-gifts.js';
import { campusPlaces } from '#explain/documents/long-range/compute-places.js';
import { staffingRequest } from '#explain/documents/staffing/compute-staffing.js';
import { workYear } from '#explain/documents/work-year/compute-work-year.js';
import { administrationBrief } from '#report/administration-brief/administration-brief.js';
import { annualReport } from '#report/annual-report/annual-report.js';
import type { Edition } from '#report/document/edition.js';
import type { PlanDocument } from '#report/document/plan-document.js';
import { donorProspectus } from '#report/donor-prospectus/donor-prospectus.js';
import { longRangePlan } from '#report/long-range-plan/long-range-plan.js';
import { materialsOrder } from '#report/materials-order/materials-order.js';
import { siteDossierDocument } from '#report/site-dossier/site-dossier.js';
import { staffingRequestDocument } from '#report/staffing-request/staffing-request.js';
import { workCalendar } from '#report/work-calendar/work-calendar.js';
import { documentKinds, type DocumentKind, type DocumentWish } from '../ports/document-writer.js';
import type { DocumentSource } from './document-source.js';

interface Maker {
  readonly title: string;
  /** Sites that there is one for each of; left out: one for the whole plan. */
  readonly sites?: SitesOfKind;
  readonly make: (source: DocumentSource, edition: Edition, site: string) => PlanDocument;
}

interface SitesOfKind {
  readonly all: (source: DocumentSource) => readonly string[];
  /** Those for which it is written unless another is asked for. */
  readonly usual: (source: DocumentSource) => readonly string[];
}

const MAKERS: Readonly<Record<DocumentKind, Maker>> = {
  'administration-brief': {
    title: 'Administration brief',
    make: ({ overview, answers }, edition) => administrationBrief(overview, edition, answers),
  },
  'long-range-plan': {
    title: 'Long-range plan',
    make: ({ overview, campus, ground, answers }, edition) => {
      const futures = answers?.futures ? { futures: answers.futures } : {};
      const places = campusPlaces(ground());
      return longRangePlan({ overview, campus, places, ...futures }, edition);
    },
  },
  'donor-prospectus': {
    title: 'Donor prospectus',
    sites: { all: plannedSites, usual: placeToOffer },
    make: ({ overview, ground }, edition, site) => {
      const [place, gifts] = [siteDossier(ground(), site), giftPackages(ground(), site)];
      return donorProspectus(overview, { place, gifts }, edition);
    },
  },
  'staffing-request': {
    title: 'Grounds staffing request',
    make: ({ overview, ground }, edition) =>
      staffingRequestDocument(overview, staffingRequest(ground(), overview.seasons), edition),
  },
  'site-dossier': {
    title: 'Site dossier',
    sites: { all: ({ campus }) => campus.candidates.map(({ id }) => id), usual: firstSites },
    make: ({ overview, ground }, edition, site) =>
      siteDossierDocument(overview, siteDossier(ground(), site), edition),
  },
  'materials-order': {
    title: 'Materials order',
    make: ({ overview, ground }, edition) => materialsOrder(overview, workYear(ground()), edition),
  },
  'work-calendar': {
    title: 'Work calendar',
    make: ({ overview, ground }, edition) => workCalendar(overview, workYear(ground()), edition),
  },
  'annual-report': {
    title: 'Annual report',
    make: ({ overview, campus, ground }, edition) =>
      annualReport({ overview, campus, work: workYear(ground()) }, edition),
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
  return wishes(source, 'all').find((wish) => fileNameOf(wish) === fileName) ?? null;
}

/** Each kind once; of those about a site, for the sites that come first. */
export function usualDocuments(source: DocumentSource): DocumentWish[] {
  return wishes(source, 'usual');
}

/** Documents of one site: those of the kinds that are about one and that the plan has of it. */
export function siteDocuments(source: DocumentSource, site: string): DocumentWish[] {
  return wishes(source, 'all').filter((wish) => wish.site === site);
}

function wishes(source: DocumentSource, which: keyof SitesOfKind): DocumentWish[] {
  return documentKinds.flatMap((kind): DocumentWish[] => {
    const { sites } = MAKERS[kind];
    return sites ? sites[which](source).map((site) => ({ kind, site })) : [{ kind }];
  });
}

function hasDocument(source: DocumentSource, { kind, site }: DocumentWish): boolean {
  const { sites } = MAKERS[kind];
  if (!sites || site === undefined) return !sites && site === undefined;
  return sites.all(source).includes(site);
}

function plannedSites({ plan }: DocumentSource): string[] {
  return [...plan.decisions.placements].sort((a, b) => a.year - b.year).map(({ site }) => site);
}

/** Sites that are prepared in the first year with any. */
export function firstSites({ plan }: DocumentSource): string[] {
  const { placements } = plan.decisions;
  const first = Math.min(...placements.map(({ year }) => year));
  return placements.filter(({ year }) => year === first).map(({ site }) => site);
}

/** The place that is next to be planned for after those of the first year, whose money is settled. */
function placeToOffer(source: DocumentSource): string[] {
  const first = firstSites(source);
  const planned = plannedSites(source);
  const place = planned.find((site) => !first.includes(site)) ?? planned[0];
  return place === undefined ? [] : [place];
}
