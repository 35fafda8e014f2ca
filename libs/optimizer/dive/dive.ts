import type { Variable } from '#mip/model.js';
import type { OpenRelaxation } from '#mip/solver.js';
import { groupBy } from '#units/group-by.js';
import type { Random } from '#units/random.js';
import type { PlanModel } from '../model/plan-model.js';
import { settlePeople, type People, type PeopleByYear, type Point } from './settle-people.js';

/** Tries of lives that lead nowhere, after which the rest is left as it is. */
const MOST_MISSES = 12;

/** Fractions from which people are rounded up, by chance from least to most; one half where chance has no part. */
const LEAST_ROUNDED = 0.25;
const MOST_ROUNDED = 0.75;

/** By how much chance may lift the share of a life over that of another. */
const CHANCE_OF_LIVES = 0.4;

/** Distance from a whole number at which a value counts as one. */
const WHOLE = 1e-5;

/** Columns to be made whole. */
export interface DiveColumns {
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  readonly people: readonly PeopleByYear[];
  readonly lives: readonly number[];
}

/** What a dive makes whole in the model of a tier that counts people. */
export function diveColumns({ model, columns, counts }: PlanModel): DiveColumns {
  const stay = counts.filter(({ kind }) => kind === 'held');
  const forSeason = columns.hires.filter(({ position }) => position.term !== 'recurring');
  const columnsOf = (of: readonly { readonly variable: Variable }[]) =>
    of.map(({ variable }) => variable.column);
  return {
    lower: model.lower,
    upper: model.upper,
    people: [
      ...[...groupBy(stay, ({ series }) => series).values()].map((of) => ({
        columns: columnsOf(of),
        stay: true,
      })),
      ...[...groupBy(forSeason, ({ position }) => position.id).values()].map((of) => ({
        columns: columnsOf(of),
        stay: false,
      })),
    ],
    lives: columns.lifecycles.map(({ variable }) => variable.column),
  };
}

export interface Diving extends DiveColumns {
  /** 1 where more is better, else -1. */
  readonly sign: 1 | -1;
  /** People that surely admit a point, to begin from where those nearest to the relaxation admit none. */
  readonly surePeople: People;
  /** Left out: the dive goes by values alone. */
  readonly random?: Random;
  /** Seconds of one solve at the most. */
  readonly patience: number;
  readonly done: () => boolean;
}

export interface Dived {
  /** The last point that was reached: people and most lives are whole, unless it was cut short. */
  readonly values: Float64Array;
  /** Where people were whole and lives were not. */
  readonly settled: Point;
}

/**
 * Makes a relaxation whole step by step (diving, as in Achterberg 2007, chapter 9): people first, all at once
 * and then bettered, since what fractions of them pay for is lost later; then lives, the largest share first.
 *
 * @param lp a relaxation whose bounds change
 * @returns `undefined` where no point was reached
 */
export function dive(lp: OpenRelaxation, of: Diving): Dived | undefined {
  return new Dive(lp, of).run();
}

class Dive {
  constructor(
    private readonly lp: OpenRelaxation,
    private readonly of: Diving,
  ) {}

  run(): Dived | undefined {
    const root = this.solved();
    const settled = root && (this.settled(this.rounded(root)) ?? this.settled(this.of.surePeople));
    if (!settled) return undefined;
    return { values: this.settleLives(settled).values, settled };
  }

  private settled(start: People): Point | undefined {
    return settlePeople(start, {
      ...this.of,
      hold: (people) => {
        for (const [column, count] of people) this.lp.setColumn(column, count, count);
      },
      solved: () => this.solved(),
    });
  }

  /** All people whole, those below a fraction down. */
  private rounded({ values }: Point): People {
    const { random, people } = this.of;
    const from = random ? LEAST_ROUNDED + (MOST_ROUNDED - LEAST_ROUNDED) * random() : 0.5;
    const columns = people.flatMap((of) => of.columns);
    return new Map(columns.map((c) => [c, Math.floor((values[c] ?? 0) + 1 - from)]));
  }

  private settleLives(from: Point): Point {
    let at = from;
    let misses = 0;
    while (misses < MOST_MISSES && !this.of.done()) {
      const column = this.largestShare(at);
      if (column === undefined) return at;
      let next = this.solvedWith(column, 1, 1);
      if (!next) {
        misses += 1;
        next = this.solvedWith(column, 0, 0);
      }
      if (!next) return at;
      at = next;
    }
    return at;
  }

  private largestShare({ values }: Point): number | undefined {
    const { random } = this.of;
    let most = -Infinity;
    let found: number | undefined;
    for (const column of this.of.lives) {
      const value = values[column] ?? 0;
      if (!isFraction(value)) continue;
      const share = value + (random ? CHANCE_OF_LIVES * random() : 0);
      if (share <= most) continue;
      most = share;
      found = column;
    }
    return found;
  }

  private solvedWith(column: number, lower: number, upper: number): Point | undefined {
    this.lp.setColumn(column, lower, upper);
    return this.solved();
  }

  private solved(): Point | undefined {
    const outcome = this.lp.solve(this.of.patience);
    if (outcome.kind !== 'optimal') return undefined;
    return {
      worth: this.of.sign * outcome.objective,
      values: outcome.values,
      gains: outcome.columnDuals.map((d) => this.of.sign * d),
    };
  }
}

function isFraction(value: number): boolean {
  return Math.abs(value - Math.round(value)) > WHOLE;
}
