import createClient from 'openapi-fetch';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import type { components, paths } from './client/openapi.data.js';
import { reach } from './client/reach.js';
import { RefusedError, refusalOf } from './client/refusal.js';

export { OfflineError } from './client/reach.js';
export { RefusedError, type Refusal } from './client/refusal.js';

/** The shapes of the api, as its own description has them. */
type Schemas = components['schemas'];
export type CampusSummary = Schemas['CampusSummary'];
export type PlanSummary = Schemas['PlanSummary'];
export type Solve = Schemas['Solve'];
export type SolveProgress = Schemas['SolveProgress'];
export type SolveWish = Partial<Schemas['SolveWish']>;
export type Problem = Schemas['Problem'];
export type SiteEstimates = Schemas['SiteEstimates'];
export type TypeEstimate = Schemas['TypeEstimate'];
export type EstimateNode = Schemas['EstimateNode'];
export type SiteCheck = Schemas['SiteCheck'];
export type PartSaved = Schemas['PartSaved'];
export type Decision = Schemas['Decision'];
export type NewDecision = Schemas['NewDecision'];
export type ImportPreview = Schemas['ImportPreview'];
export type ImportApplied = Schemas['ImportApplied'];
export type ImportRow = Schemas['ImportRow'];
export type ImportPlan = Schemas['ImportPlan'];
export type BroughtPlan = ImportApplied['broughtPlans'][number];
export type Explanation = Schemas['Explanation'];
export type Question = Schemas['Question'];
export type CampusQuestion = Schemas['CampusQuestion'];
export type SiteSuitability = Schemas['SiteSuitability'];
export type PlanDocument = Schemas['PlanDocumentSummary'];
export type CampusFile = Schemas['CampusFile'];
export type CandidateSite = CampusFile['candidateSites'][number];
export type ExistingSite = CampusFile['existingSites'][number];
export type HandPlacement = Omit<CampusFile['handPlacements'][number], 'site'>;

/** Seconds that an answer may take; what it does not reach in them is said. */
const ANSWER_SECONDS = 28;

/** The event of a solve's stream; its data is a `Solve`. */
export const SOLVE_EVENT = 'solve';

const client = createClient<paths>({ fetch: reach });
const to = <Params>(path: Params) => ({ params: { path } });

/**
 * What the page asks of the api; no other file knows its addresses. Every method may throw
 * `OfflineError` or `RefusedError`.
 */
export const api = {
  health: async (): Promise<unknown> => answer(client.GET('/api/health')),

  async campuses(): Promise<readonly CampusSummary[]> {
    return (await answer(client.GET('/api/campuses'))).campuses;
  },

  /** The newest version of a campus, with its file. */
  async campus(id: string): Promise<{ readonly version: number; readonly file: CampusFile }> {
    const { version, file } = await answer(client.GET('/api/campuses/{id}', to({ id })));
    return { version, file: file as unknown as CampusFile };
  },

  async addCampus(file: unknown): Promise<Schemas['CampusSaved']> {
    return answer(client.POST('/api/campuses', { body: file as CampusFile }));
  },

  /** Newest first. */
  async plans(id: string): Promise<readonly PlanSummary[]> {
    return (await answer(client.GET('/api/campuses/{id}/plans', to({ id })))).plans;
  },

  async overview(id: string): Promise<PlanOverview> {
    const reply = await answer(client.GET('/api/plans/{id}/overview', to({ id })));
    return reply as unknown as PlanOverview;
  },

  /** Newest first. */
  async solves(id: string): Promise<readonly Solve[]> {
    return (await answer(client.GET('/api/campuses/{id}/solves', to({ id })))).solves;
  },

  startSolve(id: string, wish: SolveWish): Promise<Solve> {
    const body = wish as Schemas['SolveWish'];
    return answer(client.POST('/api/campuses/{id}/solves', { ...to({ id }), body }));
  },

  solve: (id: string): Promise<Solve> => answer(client.GET('/api/solves/{id}', to({ id }))),

  cancelSolve: (id: string): Promise<Solve> =>
    answer(client.POST('/api/solves/{id}/cancel', to({ id }))),

  estimates: (id: string, site: string): Promise<SiteEstimates> =>
    answer(client.GET('/api/campuses/{id}/sites/{site}/estimate', to({ id, site }))),

  checkSite(id: string, site: { readonly id: string }): Promise<SiteCheck> {
    const path = { id, site: site.id };
    const body = { site: { ...site } };
    return answer(client.POST('/api/campuses/{id}/sites/{site}/check', { params: { path }, body }));
  },

  saveSite(of: SiteAddress, change: Schemas['SiteChange']): Promise<PartSaved> {
    return answer(client.PUT('/api/campuses/{id}/sites/{site}', { ...to(of), body: change }));
  },

  placeByHand(of: SiteAddress, change: PlacementChange): Promise<PartSaved> {
    const body = { ...change, handPlacements: [...change.handPlacements] };
    return answer(
      client.PUT('/api/campuses/{id}/sites/{site}/hand-placements', { ...to(of), body }),
    );
  },

  /** What a file (CSV, workbook, GeoJSON, bundle) would change; nothing is saved. */
  dryRun: (id: string, file: Blob): Promise<ImportPreview> =>
    answer(client.POST('/api/campuses/{id}/imports', { ...to({ id }), ...fileBody(file) })),

  /** Saves a file that was run dry, all of it or nothing. */
  applyImport(of: { id: string; token: string }, file: Blob): Promise<Schemas['ImportApplied']> {
    const asked = { ...to(of), ...fileBody(file) };
    return answer(client.POST('/api/campuses/{id}/imports/{token}/apply', asked));
  },

  /** Questions asked of a plan, newest first. */
  async explanations(planId: string): Promise<readonly Explanation[]> {
    const asked = client.GET('/api/plans/{id}/explanations', to({ id: planId }));
    return (await answer(asked)).explanations;
  },

  ask(planId: string, question: Question, seconds: number = ANSWER_SECONDS): Promise<Explanation> {
    const body = { question, seconds };
    return answer(client.POST('/api/plans/{id}/explanations', { ...to({ id: planId }), body }));
  },

  /** Questions asked of the versions of a campus, newest first. */
  async campusExplanations(id: string): Promise<readonly Explanation[]> {
    const asked = client.GET('/api/campuses/{id}/explanations', to({ id }));
    return (await answer(asked)).explanations;
  },

  /** Asks the newest version of a campus. */
  askCampus(
    id: string,
    question: CampusQuestion,
    seconds: number = ANSWER_SECONDS,
  ): Promise<Explanation> {
    const body = { question, seconds };
    return answer(client.POST('/api/campuses/{id}/explanations', { ...to({ id }), body }));
  },

  explanation: (id: string): Promise<Explanation> =>
    answer(client.GET('/api/explanations/{id}', to({ id }))),

  suitability: (id: string): Promise<Schemas['SuitabilityList']> =>
    answer(client.GET('/api/campuses/{id}/suitability', to({ id }))),

  async documents(planId: string): Promise<readonly PlanDocument[]> {
    return (await answer(client.GET('/api/plans/{id}/documents', to({ id: planId })))).documents;
  },

  /** Newest first. */
  async decisions(id: string): Promise<readonly Decision[]> {
    return (await answer(client.GET('/api/campuses/{id}/decisions', to({ id })))).decisions;
  },

  recordDecision: (planId: string, body: NewDecision): Promise<Decision> =>
    answer(client.POST('/api/plans/{id}/decisions', { ...to({ id: planId }), body })),

  solveEventsPath: (id: string): string => `/api/solves/${encodeURIComponent(id)}/events`,

  exportPath: (id: string, format: string, planId: string | null): string =>
    `/api/campuses/${encodeURIComponent(id)}/exports/${format}${planId === null ? '' : `?plan=${planId}`}`,

  dossierPath: (planId: string, site: string): string =>
    `/api/plans/${encodeURIComponent(planId)}/documents/site-dossier-${encodeURIComponent(site)}.pdf`,

  administrationBriefPath: (planId: string): string =>
    `/api/plans/${encodeURIComponent(planId)}/documents/administration-brief.pdf`,
};

/** A file as the body of a request, sent as it is. */
function fileBody(file: Blob) {
  return {
    // The description knows a file as text; what is sent is the file.
    body: file as unknown as string,
    bodySerializer: (body: string) => body,
    headers: { 'content-type': 'application/octet-stream' },
  };
}

/** One site of one campus. */
export interface SiteAddress {
  readonly id: string;
  readonly site: string;
}

/** What is placed by hand for one site in place of what was. */
export interface PlacementChange {
  readonly basedOn: number;
  readonly handPlacements: readonly HandPlacement[];
}

interface Answered<Data> {
  readonly data?: Data;
  readonly error?: unknown;
  readonly response: Response;
}

async function answer<Data>(asked: Promise<Answered<Data>>): Promise<Data> {
  const { data, error, response } = await asked;
  if (data === undefined) throw new RefusedError(refusalOf(response, error));
  return data;
}
