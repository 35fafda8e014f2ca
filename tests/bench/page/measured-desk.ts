import type { JsonDocument } from '#planning/json-document.js';
import type { Solving } from '#planning/ports/solving.js';
import { startDesk, type RealDesk } from '../../support/page/real-desk.js';
import { planDocument } from '../../support/page/small-desk.js';
import { generatedFile } from '../programs/generated-program.js';
import { FIRST_YEAR } from '../programs/generated-sites.js';

/** How large a campus the page is measured on. */
export interface DeskSize {
  readonly sites: number;
  readonly years: number;
}

/**
 * The page on the real api with a generated campus and a plan that places up to half of its sites,
 * evenly over the years; how good the plan is does not matter to the page.
 */
export function startMeasuredDesk({ sites, years }: DeskSize): Promise<RealDesk> {
  const file = generatedFile({ sites, years, kind: 'loose', seed: 1 });
  const placed = file.candidateSites
    .slice(0, Math.ceil(sites / 2))
    .map(({ id, buildTypes }, place) => {
      return [id, buildTypes[0] ?? '', FIRST_YEAR + (place % years)] as const;
    });
  const campus = file as unknown as JsonDocument;
  return startDesk({ campus, plan: planDocument(campus, placed) }, asksForNoSolve);
}

const asksForNoSolve: Solving = {
  solve: () => Promise.reject(new Error('the page is measured without a solve')),
};
