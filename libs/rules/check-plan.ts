import type { Breach } from '#domain/breach.js';
import type { Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import { checkBindingCommitments } from './binding-commitments.js';
import { checkBuiltOnce } from './built-once/check.js';
import type { Check } from './check.js';
import { checkCompost } from './compost/check.js';
import { checkConstruction } from './construction/check.js';
import { checkEligibleYears } from './eligible-years/check.js';
import { checkExclusiveGroup } from './exclusive-group/check.js';
import { checkFunds } from './funds/check.js';
import { checkHandPlacements } from './hand-placements/check.js';
import { checkLabor } from './labor/check.js';
import { checkLaterChanges } from './later-changes/check.js';
import { checkPhases } from './phases/check.js';
import { checkPositions } from './positions/check.js';
import { checkPrecedence } from './precedence/check.js';
import { checkReserveFloor } from './reserve-floor/check.js';
import { checkStability } from './stability/check.js';
import { checkWorkDays } from './work-days/check.js';

/** What a plan decides: judged first, since what it asks for cannot be worked out from nonsense. */
const DECISION_CHECKS: readonly Check[] = [
  checkEligibleYears,
  checkBuiltOnce,
  checkPhases,
  checkLaterChanges,
  checkConstruction,
  checkHandPlacements,
  checkStability,
  checkPrecedence,
  checkExclusiveGroup,
  checkPositions,
  checkWorkDays,
];

/** What the decisions ask for, in every season and year of horizon and tail. */
const ACCOUNT_CHECKS: readonly Check[] = [
  checkLabor,
  checkCompost,
  checkFunds,
  checkReserveFloor,
  checkBindingCommitments,
];

/** Every breach of every rule by a finished plan. Empty: the plan is verified. */
export function checkPlan(campus: Campus, plan: Plan): Breach[] {
  const found = DECISION_CHECKS.flatMap((check) => check(campus, plan));
  if (unknownNames(campus, plan)) return found;
  return [...found, ...ACCOUNT_CHECKS.flatMap((check) => check(campus, plan))];
}

function unknownNames(campus: Campus, plan: Plan): boolean {
  const sites = new Map(campus.candidates.map((s) => [s.id, s]));
  const types = new Set(campus.buildTypes.map((t) => t.id));
  const positions = new Set(campus.positions.map((p) => p.id));
  const changes = new Set(campus.laterChanges?.map((c) => c.id));
  return (
    plan.decisions.placements.some(
      (p) =>
        !sites.has(p.site) ||
        !types.has(p.buildType) ||
        (p.change !== undefined && !changes.has(p.change.id)),
    ) || plan.decisions.hires.some((h) => !positions.has(h.position))
  );
}
