import type { Lifecycle } from '#rules/columns.js';
import type { SearchState } from '../search/state.js';
import { benefitOfSites } from './values.js';

/** Lives of the plans that a search has come by, each with the benefit of the best plan that has it. */
export class MetLives {
  private readonly most = new Map<Lifecycle, number>();

  meet(state: SearchState): void {
    const benefit = benefitOfSites(state);
    for (const life of state.lives)
      if ((this.most.get(life) ?? -Infinity) < benefit) this.most.set(life, benefit);
  }

  /** As many as `count`, those of the best plans first. */
  first(count: number): ReadonlySet<Lifecycle> {
    const best = [...this.most].sort(([, a], [, b]) => b - a);
    return new Set(best.slice(0, count).map(([life]) => life));
  }
}
