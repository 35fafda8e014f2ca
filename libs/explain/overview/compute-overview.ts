import { lastBuildYear } from '#domain/calendar.js';
import { candidate, type Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import type { SolveReport } from '#domain/tier.js';
import { cents, centsToDollars } from '#units/cents.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import { alternatives } from './alternatives/alternatives.js';
import { cautionsOf } from './cautions.js';
import { groundOf, type Ground } from './ground.js';
import { headlineOf } from './headline.js';
import { seasonRows } from './labor/season-rows.js';
import { compostRows } from './ledgers/compost-rows.js';
import { fundYears } from './ledgers/fund-years.js';
import { fundRows, lapseRows, moneyRows, paybackRows } from './ledgers/money-rows.js';
import { limitRows } from './limits/limit-rows.js';
import { nextYear } from './next/next-year.js';
import type { PlanOverview } from './plan-overview.js';
import { promiseRows } from './promises/promise-rows.js';
import { solveSentence } from './solve-sentence.js';
import { sourcesOf } from './sources.js';
import { unknownRows } from './unknowns/unknown-rows.js';
import { hireRows } from './years/hire-rows.js';
import { yearRows } from './years/year-rows.js';

/**
 * All that a reader of a verified plan wants to see, worked out from the campus and the plan. The
 * plan is taken to keep every rule: an unverified one gives numbers that do not add up.
 */
export function planOverview(campus: Campus, plan: Plan, report: SolveReport): PlanOverview {
  const ground = groundOf(campus, plan);
  const seasons = seasonRows(ground);
  const years = yearRows(ground);
  const ledger = fundYears(campus, plan);
  const next = nextYear(ground, seasons);
  const limits = limitRows(ground, { seasons, years, ledger });
  const promises = promiseRows(ground);
  return {
    ...namesOf(campus),
    solve: {
      ending: report.ending,
      tiers: report.tiers,
      sentence: solveSentence(campus, report),
    },
    headline: headlineOf(ground, { next, limits, promises }),
    next,
    years,
    seasons,
    funds: fundRows(ledger),
    money: moneyRows(ground, ledger),
    compost: compostRows(ground),
    lapses: lapseRows(ledger),
    paybacks: paybackRows(ground),
    hires: hireRows(ground),
    limits,
    promises,
    unknowns: unknownRows(ground),
    cautions: cautionsOf(ground),
    sources: sourcesOf(ground),
    alternatives: alternatives(ground),
    totals: totalsOf(ground),
  };
}

function namesOf({ id, name, program, dataDate, calendar }: Campus) {
  return {
    campus: { id, name, program, dataDate },
    firstYear: fiscalYearLabel(calendar.firstYear),
    lastYear: fiscalYearLabel(lastBuildYear(calendar)),
  };
}

function totalsOf({ campus, plan }: Ground): PlanOverview['totals'] {
  const sites = plan.decisions.placements.map(({ site }) => candidate(campus, site));
  const capital = plan.spending.filter(({ line }) => line === 'build');
  return {
    sitesBuilt: sites.length,
    candidates: campus.candidates.length,
    areaBuiltSqFt: sites.reduce((sum, { areaSqFt }) => sum + areaSqFt, 0),
    capitalNominalDollars: centsToDollars(
      cents(capital.reduce((sum, { amount }) => sum + amount, 0)),
    ),
  };
}
