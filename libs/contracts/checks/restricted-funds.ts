import { aWarning, type Problem } from '#domain/problem.js';
import { toOptionalYear } from '../conversion/values.js';
import type { CandidatePart, FileView, FundPart } from './file-view.js';
import { failsItsGates, openYears } from './open-years.js';

/** Build money that no site can ever use. Such a gift is real, so the plan is made and says so. */
export function restrictedFundProblems(view: FileView): Problem[] {
  return view.funds
    .filter(({ restriction }) =>
      restriction.lines.every((line) => isForNewSites(line, restriction)),
    )
    .flatMap((fund) => problemsOf(view, fund));
}

/** Care money by site waits for its site too; care money without a rule by site never waits. */
function isForNewSites(line: string, { sites }: FundPart['restriction']): boolean {
  return line === 'build' || (line === 'care' && sites !== 'any');
}

function problemsOf(view: FileView, fund: FundPart): Problem[] {
  if (!view.time || mayServeExisting(view, fund)) return [];
  const sites = meantSites(view, fund);
  if (sites === undefined) return [];
  const fitting = sites.filter((site) => typesFor(fund, site).length > 0);
  if (fitting.length === 0) return [noSite(fund)];
  if (fitting.every((site) => failsItsGates(view, site, typesFor(fund, site)))) {
    return [gatesFail(fund, fitting)];
  }
  const years = fitting.flatMap((site) => openYears(view, site, typesFor(fund, site)));
  const expires = toOptionalYear(fund.expires);
  const first = Math.min(...years);
  return expires !== undefined && first > expires ? [expiresFirst(fund, first)] : [];
}

/** Undefined where a site that is meant could not be read: then nothing is said. */
function meantSites(view: FileView, { restriction }: FundPart): CandidatePart[] | undefined {
  const { sites } = restriction;
  const readable = new Set(view.candidateSites.map(({ id }) => id));
  const meant = sites === 'any' ? [...view.ids.candidates] : sites;
  const given = meant.filter((id) => view.ids.candidates.has(id));
  if (given.length === 0 || given.some((id) => !readable.has(id))) return undefined;
  return view.candidateSites.filter(({ id }) => given.includes(id));
}

function mayServeExisting(view: FileView, { restriction: { sites } }: FundPart): boolean {
  return sites !== 'any' && sites.some((id) => view.ids.existing.has(id));
}

function typesFor({ restriction }: FundPart, site: CandidatePart): readonly string[] {
  const { buildTypes } = restriction;
  return buildTypes === 'any'
    ? site.buildTypes
    : site.buildTypes.filter((type) => buildTypes.includes(type));
}

function noSite(fund: FundPart): Problem {
  return aWarning(
    { code: 'FUND-NO-SITE-QUALIFIES', record: `fund ${fund.id}`, field: 'restriction.buildTypes' },
    [
      'None of its sites may become any of the build types that it pays for.',
      'Ask the giver for other words, or allow the build type on a site.',
    ],
  );
}

function gatesFail(fund: FundPart, sites: readonly CandidatePart[]): Problem {
  const names = sites.length > 3 ? `${sites.length} sites` : sites.map(({ id }) => id).join(', ');
  return aWarning(
    { code: 'FUND-SITE-GATE-FAILS', record: `fund ${fund.id}`, field: 'restriction.sites' },
    [
      `It may be spent only on ${names}, where a gate fails for all that it pays for.`,
      'Ask the giver for another site before the money is promised.',
    ],
  );
}

function expiresFirst(fund: FundPart, first: number): Problem {
  const when = Number.isFinite(first) ? `before FY${first}` : 'in any year of the plan';
  return aWarning(
    {
      code: 'FUND-EXPIRES-BEFORE-BUILD',
      record: `fund ${fund.id}`,
      field: 'expires',
      value: fund.expires,
    },
    [
      `It expires with ${fund.expires}, and no site that it may be spent on can be built ${when}.`,
      'Ask for a later date or another site.',
    ],
  );
}
