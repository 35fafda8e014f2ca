import type { OpenRelaxation } from '#mip/solver.js';
import type { Random } from '#units/random.js';
import type { PlanModel } from '../model/plan-model.js';

/** Tries of lives that lead nowhere, after which the rest is left as it is. */
const MOST_MISSES = 12;

/** By how much chance may lift the share of a life over that of another. */
const CHANCE_OF_LIVES = 0.4;

/** Distance from a whole number at which a value counts as one. */
const WHOLE = 1e-5;

/** Columns to be made whole. */
export interface DiveColumns {
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  /** People; the last are decided first. */
  readonly people: readonly number[];
  readonly lives: readonly number[];
}

/** What a dive makes whole in the model of a tier that counts people. */
export function diveColumns({ model, columns, counts }: PlanModel): DiveColumns {
  const stay = counts.filter(({ kind }) => kind === 'held');
  const forSeason = columns.hires.filter(({ position }) => position.term !== 'recurring');
  return {
    lower: model.lower,
    upper: model.upper,
    people: [...forSeason, ...stay].map(({ variable }) => variable.column),
    lives: columns.lifecycles.map(({ variable }) => variable.column),
  };
}

export interface Diving extends DiveColumns {
  /** 1 where more is better, else -1. */
  readonly sign: 1 | -1;
  /** Left out: the dive goes by values alone. */
  readonly random?: Random;
  /** Objective by which chance may prefer one side of a fraction. */
  readonly chance: number;
  /** Seconds of one solve at the most. */
  readonly patience: number;
  readonly done: () => boolean;
}

/** Bounds of a column, both included. */
type Range = readonly [lower: number, upper: number];

interface Point {
  readonly worth: number;
  readonly values: Float64Array;
  /** Reduced costs, one for each column. */
  readonly costs: Float64Array;
}

export interface Dived {
  /** The last point that was reached: people and most lives are whole, unless it was cut short. */
  readonly values: Float64Array;
  /** Reduced costs where people were whole and lives were not. */
  readonly costs: Float64Array;
}

/**
 * Makes a relaxation whole step by step (diving, as in Achterberg 2007, chapter 9): people first, each to the
 * side that costs less, since what fractions of them pay for is lost later; then lives, the largest share first.
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
    const settled = root && this.settlePeople(root);
    return settled && { values: this.settleLives(settled).values, costs: settled.costs };
  }

  private settlePeople(from: Point): Point | undefined {
    const ranges = new Map<number, Range>();
    let at: Point | undefined = from;
    while (at && !this.of.done()) {
      const { values }: Point = at;
      const column = this.of.people.findLast((c) => isFraction(values[c] ?? 0));
      if (column === undefined) break;
      const { lower, upper } = this.of;
      const range = ranges.get(column) ?? [lower[column] ?? 0, upper[column] ?? Infinity];
      const side = this.betterSide(column, values[column] ?? 0, range);
      if (side) ranges.set(column, side.range);
      at = side?.point;
    }
    // What lives are given from here on they are given among these people.
    for (const column of at ? this.of.people : []) {
      const people = Math.round(at?.values[column] ?? 0);
      this.lp.setColumn(column, people, people);
    }
    return at;
  }

  /** The side of a fraction that costs less. */
  private betterSide(
    column: number,
    value: number,
    [least, most]: Range,
  ): { readonly point: Point; readonly range: Range } | undefined {
    const [down, up]: [Range, Range] = [
      [least, Math.floor(value)],
      [Math.ceil(value), most],
    ];
    const downPoint = this.solvedWith(column, ...down);
    const upPoint = this.solvedWith(column, ...up);
    const worthOf = (side: Point | undefined) => (side ? side.worth + this.luck() : -Infinity);
    if (upPoint && worthOf(upPoint) >= worthOf(downPoint)) return { point: upPoint, range: up };
    const point = downPoint && this.solvedWith(column, ...down);
    return point && { point, range: down };
  }

  private luck(): number {
    const { random, chance } = this.of;
    return random ? chance * random() : 0;
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
      costs: outcome.columnDuals,
    };
  }
}

function isFraction(value: number): boolean {
  return Math.abs(value - Math.round(value)) > WHOLE;
}
