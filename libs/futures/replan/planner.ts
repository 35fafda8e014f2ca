import { purchasesOf, allPaid, type SearchState } from '#optimizer/search/state.js';
import { gapIn } from '#optimizer/search/hire-for-gaps.js';
import type { Lifecycle } from '#rules/columns.js';
import type { Basis } from './basis.js';
import { close, forecast, type Known } from './forecast.js';
import { repair, replace, type Repair } from './repair.js';

/** What a course of events tells its planner; the planner itself keeps the rest. */
export type News = Omit<Known, 'begun' | 'hires' | 'bids'> & {
  /** Whether works hold the ground of a life that would begin this year. */
  readonly isTaken: (life: Lifecycle) => boolean;
};

/**
 * Plans anew each year of one future, by a work-limited repair: as long as the rest of the plan is forecast
 * to hold it is kept as it is, and what does not hold is repaired. No chance of its own.
 */
export class Planner {
  private readonly begun = new Set<Lifecycle>();
  private readonly bids = new Map<string, number>();
  private readonly failed = new Set<string>();
  private failedIn = -1;
  private open: readonly Lifecycle[];
  /** Positions at [position][start year], as they are meant now. */
  private hires: readonly Int32Array[];

  constructor(private readonly basis: Basis) {
    this.open = basis.planned;
    this.hires = basis.hires;
  }

  /** Positions that start in a year: [position] counts. */
  startingIn(year: number): number[] {
    return this.hires.map((byYear) => byYear[year] ?? 0);
  }

  /** All positions at [position][start year]. */
  get hired(): readonly Int32Array[] {
    return this.hires;
  }

  /** The sites to begin this year. */
  next(news: News): Lifecycle[] {
    const { year } = news;
    if (this.failedIn !== year) this.failed.clear();
    this.failedIn = year;
    const { basis, begun, hires, bids } = this;
    const state = forecast(basis, { ...news, begun, hires, bids }, this.open);
    this.plan(state, news);
    close(basis, state);
    return this.open.filter((l) => l.yearIndex === year);
  }

  /** Notes that a site was begun. */
  began(life: Lifecycle, bid: number): void {
    this.begun.add(life);
    this.bids.set(life.site, bid);
    this.open = this.open.filter((l) => l !== life);
  }

  /** Notes that a site could not be begun this year, at the price that was asked. */
  turnedDown(life: Lifecycle, bid: number): void {
    this.bids.set(life.site, bid);
    this.failed.add(life.site);
  }

  private plan(state: SearchState, { year, isTaken }: News): void {
    const { basis } = this;
    const mayBegin = (life: Lifecycle) =>
      life.yearIndex > year ||
      (life.yearIndex === year && !this.failed.has(life.site) && !isTaken(life));
    const has = new Set([...state.lives].map((l) => l.site));
    const dropped = basis.planned.filter((l) => !has.has(l.site));
    const of: Repair = { basis, state, year, open: this.open, dropped, mayBegin };
    if (!this.open.every(mayBegin) || !holds(state)) repair(of);
    else if (dropped.length > 0) replace(of);
    else return;
    this.open = [...state.lives]
      .filter((l) => !this.begun.has(l))
      .sort((a, b) => a.yearIndex - b.yearIndex);
    this.hires = state.hires.map((byYear) => Int32Array.from(byYear));
  }
}

/** Whether hours, money, and compost last for the rest of the plan, without another hire. */
function holds(state: SearchState): boolean {
  if (state.tables.seasonList.some(({ index }) => gapIn(state, index))) return false;
  const purchases = purchasesOf(state);
  return purchases !== undefined && allPaid(state, purchases);
}
