import type { Campus } from '#domain/campus.js';
import { leadingTier, type Ending, type SolveReport, type TierResult } from '#domain/tier.js';
import { percentInWords } from '#units/in-words.js';
import { aimInWords, amountOfTier } from './tier-words.js';

/**
 * How near to proven a plan is. Proven: every aim up to benefit; within x %: the aims before benefit
 * are proven and benefit is short of its bound by at most that share of the plan's.
 */
export function solveSentence(campus: Campus, { ending, tiers }: SolveReport): string {
  if (ending === 'proven') return 'Proven: no plan does better on any aim, up to and with benefit.';
  const leading = leadingTier(tiers);
  const stopped = stoppedBy(ending);
  if (!leading) return `${stopped}; how much better a plan could be is not known.`;
  if (leading.proven) return 'Proven: no plan does better on any aim, up to and with benefit.';
  if (leading.name !== 'benefit') return `${stopped}; ${unprovenAim(campus, leading)}`;
  if (leading.gap === null) {
    return `${stopped}; all aims before benefit are proven, and how much more benefit a plan could have is not known.`;
  }
  return `${stopped} within ${percentInWords(leading.gap)} of proven: all aims before benefit are proven.`;
}

function stoppedBy(ending: Ending): string {
  if (ending.startsWith('time-limit')) return 'Stopped by its time limit';
  if (ending.startsWith('work-limit')) return 'Stopped by its work limit';
  if (ending.startsWith('cancelled')) return 'Stopped by hand';
  return 'Not proven';
}

function unprovenAim(campus: Campus, tier: TierResult): string {
  const aim = `not proven: ${aimInWords(campus, tier.name)}, ${amountOfTier(tier.unit, tier.value)} here`;
  const best = tier.bound === null ? 'not known' : amountOfTier(tier.unit, tier.bound);
  return `${aim}; at best ${best}.`;
}
