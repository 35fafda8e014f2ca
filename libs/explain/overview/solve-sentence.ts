import type { Campus } from '#domain/campus.js';
import { leadingTier, type Ending, type SolveReport, type TierResult } from '#domain/tier.js';
import { counted, hoursInWords, percentInWords } from '#units/in-words.js';

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
  const aim = `not proven: ${aimInWords(campus, tier.name)}, ${amountOf(tier, tier.value)} here`;
  const best = tier.bound === null ? 'not known' : amountOf(tier, tier.bound);
  return `${aim}; at best ${best}.`;
}

const AIMS: Readonly<Record<string, string>> = {
  'unserved-peak': 'care left undone in the worst season',
  'unserved-total': 'care left undone in all seasons',
};

function aimInWords({ commitments }: Campus, tier: string): string {
  const id = tier.replace(/^commitment:/, '');
  const promise = commitments.find((c) => c.id === id);
  return promise ? `shortfall of “${promise.name}”` : (AIMS[tier] ?? tier);
}

function amountOf({ unit }: TierResult, value: number): string {
  switch (unit) {
    case 'hours':
      return hoursInWords(value);
    case 'hundredths of an hour':
      return hoursInWords(value / 100);
    case 'sites':
      return counted(value, 'site');
    case 'positions':
      return counted(value, 'position');
    case 'square feet':
      return counted(value, 'square foot', 'square feet');
    default:
      return `${value} ${unit}`;
  }
}
