import { digestOf } from '#contracts/canonical.js';
import { fromPlan } from '#contracts/plan-file.js';
import type { Decisions } from '#domain/plan.js';
import type { JsonDocument } from '#planning/json-document.js';
import { loadCampusFile } from '#planning/load-campus-file.js';
import type { Solving } from '#planning/ports/solving.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { completePlan } from '#optimizer/allocate/complete-plan.js';
import { purchasesFor } from '#optimizer/allocate/compost.js';
import { reportCutShort } from '#optimizer/solve/cut-short.js';
import { tierValues } from '#optimizer/tiers/tier-values.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { smallFile, type Placed } from '../small-campus.js';
import { startDesk, type RealDesk } from './real-desk.js';

/** Sites of the small campus and the years in which its plan prepares them. */
const usual: readonly Placed[] = [
  ['S-1', 'edible', 2028],
  ['S-2', 'pollinator', 2030],
];

/** A plan document of a campus document with these sites, staffed and paid as a solver's would be. */
export function planDocument(document: unknown, placed: readonly Placed[]): JsonDocument {
  const load = loadCampusFile(document);
  if (!load.ok) throw new Error(JSON.stringify(load.problems, null, 1));
  const { campus } = load;
  const placements = placed.map(([site, buildType, year]) => ({
    ...{ site, buildType },
    year: fiscalYear(year),
  }));
  const charges = campusCharges(campus);
  const base: Omit<Decisions, 'purchases'> = { placements, hires: [], workDays: [] };
  const purchases = purchasesFor(campus, base, charges);
  const { plan } = completePlan(campus, { ...base, purchases }, charges);
  const file = fromPlan(plan, campus.calendar, {
    campus: { id: campus.id, name: campus.name, digest: digestOf(document) },
    solver: { name: 'none', version: 'by hand', seed: 1, limit: { kind: 'time', seconds: 1 } },
    ending: 'time-limit',
    tiers: reportCutShort(campus, tierValues(campus, plan, charges), 'time-limit').tiers,
  });
  return JSON.parse(JSON.stringify(file)) as JsonDocument;
}

/** Answers a solve with the usual sites, but moved to where a person has fixed them. */
const movesWhatIsFixed: Solving = {
  solve: async ({ campus }) => {
    const fixed = campus['handPlacements'] as { site: string; kind: string; year?: string }[];
    const placed = usual.map(([site, type, year]): Placed => {
      const hand = fixed.find((row) => row.site === site && row.kind === 'fixed');
      return [site, type, hand?.year === undefined ? year : Number(hand.year.slice(2))];
    });
    const plan = planDocument(campus, placed);
    return { ending: 'time-limit', plan, solverVersion: 'by hand', conflict: [] };
  },
};

/** The page on the real api, with the small campus of the seeds and a plan of it. */
export function startSmallDesk(): Promise<RealDesk> {
  const campus = smallFile() as unknown as JsonDocument;
  return startDesk({ campus, plan: planDocument(campus, usual) }, movesWhatIsFixed);
}
