import { anError, aWarning, type Problem, type ProblemText } from '#domain/problem.js';
import { toFiscalYear, toOptionalYear } from '../conversion/values.js';
import { allSites, buildYears, type CandidatePart, type FileView } from './file-view.js';
import { openYears } from './open-years.js';

/** Years in which a site may be built, and the gates that say so. */
export function siteProblems(view: FileView): Problem[] {
  return [
    ...view.candidateSites.flatMap((site) => yearProblems(view, site)),
    ...plantedProblems(view),
    ...allSites(view).flatMap(({ id, gates }) => gates.flatMap((gate) => gateProblems(id, gate))),
    ...view.candidateSites.flatMap((site) => leadGateProblems(view, site)),
    ...landProblems(view),
  ];
}

function yearProblems(view: FileView, site: CandidatePart): Problem[] {
  const { earliest, latest } = site;
  if (earliest && latest && toFiscalYear(latest) < toFiscalYear(earliest)) {
    return [
      siteError(site.id, { code: 'SITE-YEARS-INVERTED', field: 'latest', value: latest }, [
        `The latest year ${latest} comes before the earliest year ${earliest}.`,
        'Swap or correct the years, or leave one out.',
      ]),
    ];
  }
  if (!view.time) return [];
  const [first, last] = buildYears(view.time);
  const never =
    (toOptionalYear(latest) ?? last) < first || (toOptionalYear(earliest) ?? first) > last;
  if (!never) return [];
  const field = earliest === undefined ? 'latest' : 'earliest';
  return [
    siteWarning(site.id, { code: 'SITE-YEARS-OUTSIDE-PLAN', field, value: site[field] }, [
      `The years of the site lie outside the plan, FY${first} to FY${last}: it is never built.`,
      'Correct the years, or leave them out.',
    ]),
  ];
}

function plantedProblems({ existingSites, time }: FileView): Problem[] {
  if (!time) return [];
  return existingSites
    .filter(({ plantedCalendarYear }) => plantedCalendarYear > time.firstYear)
    .map(({ id, plantedCalendarYear: value }) =>
      siteError(id, { code: 'SITE-PLANTED-IN-FUTURE', field: 'plantedCalendarYear', value }, [
        `The site is said to be planted in ${value}, after the plan begins in FY${time.firstYear}.`,
        'Give the year in which it was planted, or make it a candidate.',
      ]),
    );
}

function gateProblems(id: string, gate: CandidatePart['gates'][number]): Problem[] {
  if (gate.status === 'unknown' || gate.plannedClearFrom === undefined) return [];
  const place = {
    code: 'GATE-CLEAR-YEAR-UNUSED',
    field: `gates[${gate.kind}].plannedClearFrom`,
    value: gate.plannedClearFrom,
  };
  return [
    siteError(id, place, [
      `The status of the gate is ${gate.status}, and yet a year is planned from which it passes.`,
      'Leave the year out, or make the status unknown.',
    ]),
  ];
}

/** Screening level of lead for in-ground food, mg/kg: federal residential directive, October 2025. */
const LEAD_SCREEN_MG_PER_KG = 200;

/** Unknown lead is never clean lead: a food site without a contamination gate is a gap in the file. */
function leadGateProblems(view: FileView, site: CandidatePart): Problem[] {
  const lead = site.facts.leadMgPerKg;
  const edible = new Set(view.buildTypes.filter((t) => t.edible).map((t) => t.id));
  const feeds = site.buildTypes.some((type) => edible.has(type));
  const gated = site.gates.some(({ kind }) => kind === 'contamination');
  const clean = lead !== 'unknown' && lead < LEAD_SCREEN_MG_PER_KG;
  if (!feeds || gated || clean || view.unreadLead.has(site.id)) return [];
  const place = { code: 'GATE-LEAD-MISSING', field: 'gates', value: lead };
  const found = lead === 'unknown' ? 'unknown' : `${lead} mg/kg, at or above the screening level`;
  return [
    siteError(site.id, place, [
      `Soil lead is ${found}, food may be grown here, and no contamination gate stands in the way.`,
      'Add a contamination gate that bars edible types; environmental health and safety decides.',
    ]),
  ];
}

function landProblems(view: FileView): Problem[] {
  const place = { code: 'CAMPUS-NO-OPEN-SITE', record: 'the file', field: 'candidateSites' };
  if (!view.time || view.candidateSites.some((site) => openYears(view, site).length > 0)) return [];
  return [
    aWarning(place, [
      'No candidate site may be built in any year of the plan.',
      'Find out what would clear a gate, or add sites.',
    ]),
  ];
}

interface Place {
  readonly code: string;
  readonly field: string;
  readonly value?: unknown;
}

function siteError(id: string, place: Place, text: ProblemText): Problem {
  return anError({ record: `site ${id}`, ...place }, text);
}

function siteWarning(id: string, place: Place, text: ProblemText): Problem {
  return aWarning({ record: `site ${id}`, ...place }, text);
}
