import type { Campus } from '#domain/campus.js';
import type { ConflictMember } from '#domain/tier.js';
import type { Solver } from '#mip/solver.js';
import { groundOf } from '../columns/ground-of.js';
import { construct, RECIPES } from '../construct/construct.js';
import type { Ground } from '../columns/add-columns.js';
import { decisionsOf } from '../search/state.js';
import { tablesOf } from '../search/tables.js';
import { tiersOf } from '../tiers/tier-list.js';
import { soundIncumbent } from './incumbent.js';
import { frozenLimit, limitsOf, withoutCommitment } from './relaxations.js';
import type { SolveSettings, SolveSurroundings } from './settings.js';
import { relaxationBound, solveTier } from './solve-tier.js';

/** Seconds that one test of a smaller set may take. */
const TEST_SECONDS = 10;
const TEST_NODES = 2000;

/**
 * A smallest group of binding commitments and limits that cannot all hold: each member is dropped in
 * turn, and stays dropped only where the rest is still proven to admit no plan (deletion filter).
 * A member whose test ends undecided, or for whose test no time is left, stays in the group.
 */
export function conflictSet(campus: Campus, solver: Solver, run: ConflictRun): ConflictMember[] {
  let rest = campus;
  let members = droppable(campus);
  for (const each of [...members]) {
    run.around.onNoPlan(members.map((m) => m.member));
    if (outOfTime(run)) break;
    const fewer = each.without(rest);
    if (!provenImpossible(fewer, solver, run)) continue;
    rest = fewer;
    members = members.filter((m) => m !== each);
  }
  run.around.onNoPlan(members.map((m) => m.member));
  return members.map((m) => m.member);
}

interface ConflictRun {
  readonly settings: SolveSettings;
  readonly around: SolveSurroundings;
}

function outOfTime({ settings, around }: ConflictRun): boolean {
  return (
    around.shouldStop() || (settings.seconds !== undefined && around.elapsed() >= settings.seconds)
  );
}

interface Droppable {
  readonly member: ConflictMember;
  readonly without: (campus: Campus) => Campus;
}

function droppable(campus: Campus): Droppable[] {
  const commitments = campus.commitments
    .filter((c) => c.strength === 'binding')
    .map(({ id, name }) => ({
      member: { kind: 'commitment' as const, id, name },
      without: (c: Campus) => withoutCommitment(c, id),
    }));
  return [...limitsOf(), ...frozenLimit(campus), ...commitments];
}

function provenImpossible(campus: Campus, solver: Solver, run: ConflictRun): boolean {
  const { settings } = run;
  const ground = groundOf(campus);
  if (constructed(ground)) return false;
  const first = tiersOf(campus)[0]?.name ?? '';
  const limits = settings.work === undefined ? { seconds: TEST_SECONDS } : { nodes: TEST_NODES };
  const question = { ground, solver, tier: first, held: new Map(), limits, seed: settings.seed };
  const shouldStop = () => outOfTime(run);
  if (relaxationBound({ ...question, shouldStop }) === 'infeasible') return true;
  let found = false;
  const outcome = solveTier({
    ...question,
    shouldStop: () => found || outOfTime(run),
    onBound: () => undefined,
    onDecisions: () => (found = true),
  });
  return outcome.ended === 'infeasible';
}

/** True where a construction alone finds a plan that passes every check. */
function constructed(ground: Ground): boolean {
  const tables = tablesOf(ground);
  return RECIPES.some((recipe) => {
    const state = construct(tables, recipe);
    return state && soundIncumbent(ground.campus, decisionsOf(state), ground.charges) !== undefined;
  });
}
