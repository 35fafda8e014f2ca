import type { Decisions, Plan } from '#domain/plan.js';
import { completePlan } from '#optimizer/allocate/complete-plan.js';
import { purchasesFor } from '#optimizer/allocate/compost.js';
import { checkPlan } from '#rules/check-plan.js';
import { fiscalYearLabel, yearsLater } from '#units/fiscal-year.js';
import type { Ground } from '../ground.js';
import { builtThrough, firstYearOnProposed } from '../labor/first-on-proposed.js';
import type { Alternative } from '../plan-overview.js';
import { alternativeRow } from './alternative-row.js';

/**
 * The plan, and what is left of it when less is done: each alternative is a part of the plan's own
 * decisions, worked out to the cent and hour, and held to all rules but the promises, which it says
 * that it breaks. None of them is solved anew, so a better way to do less may exist.
 */
export function alternatives(ground: Ground): Alternative[] {
  const { plan } = ground;
  return [
    alternativeRow(ground, plan, {
      kind: 'this-plan',
      title: 'Follow this plan',
      summary: 'Build in its years, and ask for its positions.',
    }),
    ...(plan.decisions.hires.length > 0 ? stopBeforeHiring(ground) : skipNextYear(ground)),
    ...buildNoMore(ground),
  ];
}

function stopBeforeHiring(ground: Ground): Alternative[] {
  const from = firstYearOnProposed(ground);
  const { firstYear } = ground.campus.calendar;
  if (from === undefined || from <= firstYear) return [];
  const last = fiscalYearLabel(yearsLater(from, -1));
  return workedOut(ground, builtThrough(ground, yearsLater(from, -1)), {
    kind: 'stop-before-hiring',
    title: `Stop after ${last}`,
    summary: `Build through ${last}, then stop, and ask for nobody.`,
  });
}

function skipNextYear(ground: Ground): Alternative[] {
  const { decisions } = ground.plan;
  const { firstYear } = ground.campus.calendar;
  const placements = decisions.placements.filter((p) => p.year !== firstYear);
  if (placements.length === decisions.placements.length) return [];
  const label = fiscalYearLabel(firstYear);
  return workedOut(
    ground,
    { ...decisions, placements },
    {
      kind: 'skip-next-year',
      title: `Skip ${label}`,
      summary: `Leave out what the plan builds in ${label}, and build the rest as planned.`,
    },
  );
}

function buildNoMore(ground: Ground): Alternative[] {
  const nothing = { ...ground.plan.decisions, placements: [], hires: [] };
  return workedOut(ground, nothing, {
    kind: 'build-no-more',
    title: 'Build no more',
    summary: 'Care well for the sites that are there.',
  });
}

/** Nothing where the part of the plan breaks a rule that is no promise. */
function workedOut(
  ground: Ground,
  decisions: Decisions,
  words: Pick<Alternative, 'kind' | 'title' | 'summary'>,
): Alternative[] {
  const { campus, charges } = ground;
  const purchases = purchasesFor(campus, decisions, charges);
  const { plan, shortages } = completePlan(campus, { ...decisions, purchases }, charges);
  if (shortages.length > 0 || plan.unserved.length > 0 || breaksRule(ground, plan)) return [];
  return [alternativeRow(ground, plan, words)];
}

function breaksRule({ campus }: Ground, plan: Plan): boolean {
  const free = { ...campus, commitments: [], handPlacements: [] };
  return checkPlan(free, plan).length > 0;
}
