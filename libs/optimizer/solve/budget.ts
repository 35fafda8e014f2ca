import type { SolveLimits } from '#mip/solver.js';
import { benefitPlace, type Tier } from '../tiers/tier-list.js';
import type { SolveSettings } from './settings.js';

/** Share of the time left that one tier may take: early tiers are few and mostly closed at once. */
const EARLY_SHARE = 0.4;
const BENEFIT_SHARE = 0.9;

/** The node limit of recurring cost, which polishes and is not asked for proof, against the others'. */
const POLISH_WORK_SHARE = 0.25;

/** What the solve of one tier may use of what is left. */
export function tierBudget(of: {
  readonly place: number;
  readonly tiers: readonly Tier[];
  readonly settings: SolveSettings;
  readonly elapsed: number;
}): SolveLimits {
  const { place, tiers, settings, elapsed } = of;
  const benefit = benefitPlace(tiers);
  const share = place < benefit ? EARLY_SHARE : place === benefit ? BENEFIT_SHARE : 1;
  const work = place > benefit ? POLISH_WORK_SHARE : 1;
  return {
    ...(settings.seconds === undefined
      ? {}
      : { seconds: Math.max(0.1, (settings.seconds - elapsed) * share) }),
    ...(settings.work === undefined ? {} : { nodes: Math.max(1, Math.round(settings.work * work)) }),
    ...(settings.gap === undefined || place !== benefit ? {} : { relativeGap: settings.gap }),
    absoluteGap: absoluteGap(tiers[place]),
  };
}

function absoluteGap(tier: Tier | undefined): number {
  if (tier?.commitment) return 0.999;
  return Math.max(1e-6, (tier?.tolerance ?? 0) / 2);
}

/** Share of a tier's time that goes into re-solving parts of the plan before the whole is solved. */
const IMPROVE_SHARE = 0.6;

/** Re-solves for each node of work. */
const ROUNDS_PER_NODE = 0.1;

/** What improvement by parts may use: seconds, and rounds for repeatable runs. */
export function improvementBudget(of: Parameters<typeof tierBudget>[0]): {
  readonly seconds: number;
  readonly rounds?: number;
} {
  const { seconds, nodes } = tierBudget(of);
  const last = of.place > benefitPlace(of.tiers);
  return {
    seconds: seconds === undefined ? Infinity : seconds * (last ? 0.8 : IMPROVE_SHARE),
    ...(nodes === undefined || seconds !== undefined ? {} : { rounds: Math.max(1, Math.ceil(nodes * ROUNDS_PER_NODE)) }),
  };
}
