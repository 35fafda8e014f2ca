import type { Lifecycle } from '#rules/columns.js';
import { shuffled, type Random } from '#units/random.js';
import { isInOrder } from '../construct/admissible.js';
import { promisedByYear } from '../construct/musts.js';
import { tryLife } from '../construct/try-life.js';
import type { SearchState } from '../search/state.js';
import type { Candidates } from './candidates.js';
import type { Ranking } from './ranking.js';

/** Lives that are tried for one site, and for one promised year: most fail where a plan is full. */
const MOST_TRIES = 12;
const MOST_TRIES_IN_YEAR = 24;

export interface RecreateOf {
  readonly candidates: Candidates;
  readonly random: Random;
  readonly ranking: Ranking;
  /** Sites that promised years may lack; where they lack more, nothing else is tried. */
  readonly mayLack: number;
  /** Takes each life that is added. */
  readonly added: Lifecycle[];
}

/**
 * Builds a plan up again: promised years first, in order of time, then any site in any year.
 *
 * @returns false where promised years lack more than they may
 */
export function recreate(state: SearchState, of: RecreateOf): boolean {
  return new Recreation(state, of).run();
}

/** Sites that promises of a count ask for and a state lacks, by year index; below 0: it has more. */
export function lackingByYear(state: SearchState, { numberOf, countsIn }: Candidates): number[] {
  const lacking = [...promisedByYear(state.tables)];
  for (const life of state.lives) {
    const year = countsIn[numberOf.get(life) ?? -1] ?? -1;
    if (year >= 0) lacking[year] = (lacking[year] ?? 0) - 1;
  }
  return lacking;
}

export function total(lacking: readonly number[]): number {
  return lacking.reduce((sum, sites) => sum + Math.max(0, sites), 0);
}

class Recreation {
  /** 1 where a site is placed, by its number. */
  private readonly isPlaced: Uint8Array;
  private readonly lacking: number[];
  /** A life that did not fit will not fit later either, since others are only added. */
  private readonly failed = new Set<number>();

  constructor(
    private readonly state: SearchState,
    private readonly of: RecreateOf,
  ) {
    const { candidates } = of;
    this.isPlaced = new Uint8Array(candidates.sites);
    for (const life of state.lives)
      this.isPlaced[candidates.site[candidates.numberOf.get(life) ?? -1] ?? -1] = 1;
    this.lacking = lackingByYear(state, candidates);
  }

  run(): boolean {
    const { candidates, random, mayLack, ranking } = this.of;
    for (const among of candidates.musts[random() < 0.5 ? 'binding' : 'intended']) {
      if (!this.hasAny(among)) this.placeFirst(ranking({ among, most: Infinity }));
    }
    this.fillPromisedYears();
    if (total(this.lacking) > mayLack) return false;
    const open: number[] = [];
    for (let site = 0; site < candidates.sites; site++) if (!this.isPlaced[site]) open.push(site);
    for (const site of shuffled(random, open)) {
      const among = candidates.bySite[site];
      if (among) this.placeFirst(ranking({ among, most: MOST_TRIES }));
    }
    return true;
  }

  private hasAny(numbers: Int32Array): boolean {
    const { lives } = this.of.candidates;
    return numbers.some((i) => {
      const life = lives[i];
      return life !== undefined && this.state.lives.has(life);
    });
  }

  /** Builds what promised years lack, as far as it can. */
  private fillPromisedYears(): void {
    const { byYear, site } = this.of.candidates;
    const isOpen = (life: number) => this.isPlaced[site[life] ?? -1] !== 1;
    for (const [year, among] of byYear.entries()) {
      const wanted = this.lacking[year] ?? 0;
      if (wanted <= 0) continue;
      const lives = this.of.ranking({ among, most: MOST_TRIES_IN_YEAR, isOpen });
      for (let left = wanted; left > 0 && this.placeFirst(lives); left--);
    }
  }

  private placeFirst(lives: readonly number[]): boolean {
    for (const life of lives) if (this.place(life)) return true;
    return false;
  }

  private place(number: number): boolean {
    const { candidates } = this.of;
    const site = candidates.site[number] ?? -1;
    const life = candidates.lives[number];
    if (!life || this.isPlaced[site] === 1 || this.failed.has(number)) return false;
    const { state } = this;
    const { campus } = state.tables.ground;
    if (candidates.rivals[site]?.some((rival) => this.isPlaced[rival] === 1)) return false;
    if (candidates.isOrdered[number] === 1 && !isInOrder(campus, state.lives, life)) return false;
    if (!tryLife(state, life)) {
      this.failed.add(number);
      return false;
    }
    this.of.added.push(life);
    this.isPlaced[site] = 1;
    const year = candidates.countsIn[number] ?? -1;
    if (year >= 0) this.lacking[year] = (this.lacking[year] ?? 0) - 1;
    return true;
  }
}
