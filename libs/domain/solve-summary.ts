import { leadingTier, type SolveReport } from './tier.js';

/** One sentence on how good a plan is known to be: never "optimal" where it is not proven. */
export function solveSentence({ ending, tiers }: SolveReport): string {
  if (ending === 'no-plan') return 'It is proven that no plan keeps every binding rule.';
  if (ending.endsWith('-without-plan')) return `No plan was found before the solve ended (${ending}).`;
  if (ending === 'proven') return 'Proven: no plan of this campus is better.';
  const tier = leadingTier(tiers);
  const stopped = `Best plan found; the solve ended at its ${ending === 'cancelled' ? 'cancellation' : ending.replace('-', ' ')}`;
  if (!tier || tier.gap === null) return `${stopped}, and how much better a plan could be is not known.`;
  return `${stopped}. By ${tier.name} a plan could be at most ${percent(tier.gap)} better.`;
}

function percent(share: number): string {
  const value = share * 100;
  return `${value < 10 ? value.toFixed(1) : Math.round(value)} %`;
}
