import type { Model } from '#mip/model.js';
import type { OpenRelaxation } from '#mip/solver.js';
import type { CountColumn, CountKind } from './count-columns.js';
import { Gains } from './gains.js';

/** Kinds of counts in the order in which they are tried where nothing is known of them yet. */
const ORDER: readonly CountKind[] = [
  'held',
  'begun',
  'site',
  'type',
  'site-as-type',
  'type-in-year',
];

/** People are decided before anything else is tried: their fractions hide what sites are worth. */
const PEOPLE = ORDER.indexOf('held');

/** Columns tried before the first branchings, and before later ones: known ones and others. */
const FIRST_TRIES = 16;
const FIRST_NODES = 2;
const TRIES = 3;

/** Distance from a whole number at which a value counts as one. */
const WHOLE = 1e-5;

export interface CountTree {
  readonly model: Model;
  readonly counts: readonly CountColumn[];
  /** Columns whose reduced costs are asked for. */
  readonly lives: readonly number[];
  /** Seconds of one solve at the most. */
  readonly patience: number;
  /** What a plan must be better than to matter, in the objective of the model. */
  readonly worth: () => number;
  readonly done: () => boolean;
  /** Nodes at the most. */
  readonly nodes: number;
  /** Told each time it falls, with what the tree leaves at that moment. */
  readonly onBound: (bound: number, outcome: () => TreeOutcome) => void;
  /** The best point that is left has whole numbers only: no plan is better. */
  readonly onWhole: (values: Float64Array) => void;
}

/** What a tree leaves: no plan that matters is better than `bound`. */
export interface TreeOutcome {
  readonly bound: number;
  /** By life: no plan that takes it up is better than this. */
  readonly withLife: Float64Array;
  /** At the point where the bound is: what each life costs it, and the share of each that it takes. */
  readonly costOf: Float64Array;
  readonly valueOf: Float64Array;
}

/** Bounds of columns that were branched on, by column. */
type Range = readonly [lower: number, upper: number];

interface Node {
  readonly ranges: ReadonlyMap<number, Range>;
  /** Turned so that more is better. */
  readonly bound: number;
  /** By life: what a plan here that takes it up may reach at most. */
  readonly withLife: Float64Array;
  readonly values: Float64Array;
}

interface Fraction {
  readonly column: number;
  readonly value: number;
}

/**
 * Branch and bound (Land and Doig 1960) over counts before single sites and years: few numbers that
 * decide much, so that the bound falls soonest. Best bound first; the column to branch on is found by
 * trying some out (strong branching with pseudocosts, Achterberg, Koch and Martin 2005).
 *
 * @param lp a relaxation whose bounds change
 */
export function branchOnCounts(lp: OpenRelaxation, of: CountTree): TreeOutcome | 'nothing-better' {
  return new Tree(lp, of).run();
}

class Tree {
  private readonly sign: 1 | -1;
  private readonly ranks: Uint8Array;
  private readonly whole: readonly number[];
  private readonly gains = new Gains();
  private readonly open: Node[] = [];
  private applied: ReadonlyMap<number, Range> = new Map();
  private nodes = 0;
  private told = Infinity;

  constructor(
    private readonly lp: OpenRelaxation,
    private readonly of: CountTree,
  ) {
    const { model, counts } = of;
    this.sign = model.sense === 'maximize' ? 1 : -1;
    this.whole = [...model.kinds.keys()].filter((c) => model.kinds[c] !== 'continuous');
    this.ranks = new Uint8Array(model.kinds.length).fill(ORDER.length);
    for (const { kind, variable } of counts) this.ranks[variable.column] = ORDER.indexOf(kind);
  }

  run(): TreeOutcome | 'nothing-better' {
    const root = this.solved(new Map(), null);
    if (root === null) return 'nothing-better';
    if (root === undefined) return this.outcome([]);
    if (root.bound <= this.worth()) return 'nothing-better';
    this.open.push(root);
    while (!this.of.done() && this.nodes < this.of.nodes) {
      const node = this.takeBest();
      if (!node) return 'nothing-better';
      this.tell(node);
      if (this.branch(node)) continue;
      this.open.push(node);
      if (!this.of.done()) this.of.onWhole(node.values);
      break;
    }
    return this.outcome(this.open);
  }

  private worth(): number {
    return this.sign * this.of.worth();
  }

  /** The open node of the best bound, where that is better than the best plan. */
  private takeBest(): Node | undefined {
    const worth = this.worth();
    let best = -1;
    for (const [i, { bound }] of this.open.entries()) {
      if (bound > worth && bound > (this.open[best]?.bound ?? -Infinity)) best = i;
    }
    return best < 0 ? undefined : this.open.splice(best, 1)[0];
  }

  private tell(node: Node): void {
    if (node.bound >= this.told) return;
    this.told = node.bound;
    this.of.onBound(this.sign * node.bound, () => this.outcome([node, ...this.open]));
  }

  /** Splits a node in two; false where there is nothing to branch on. */
  private branch(node: Node): boolean {
    this.nodes += 1;
    let best: { score: number; children: readonly (Node | null)[] } | undefined;
    for (const fraction of this.candidates(node)) {
      if (this.of.done()) break;
      const children = this.split(node, fraction);
      const score = this.gains.note(fraction, this.gainsOf(node, children));
      if (!best || score > best.score) best = { score, children };
    }
    if (!best) return false;
    for (const child of best.children) if (child) this.open.push(child);
    return true;
  }

  private gainsOf(node: Node, children: readonly (Node | null)[]): [down: number, up: number] {
    const most = node.bound - this.worth();
    const gain = (child: Node | null | undefined) =>
      Math.max(0, Math.min(most, node.bound - (child?.bound ?? -Infinity)));
    return [gain(children[0]), gain(children[1])];
  }

  /** Columns worth trying: those that promise most, then those that nothing is known of. */
  private candidates(node: Node): Fraction[] {
    const fractions = this.fractions(node);
    const people = fractions.filter(({ column }) => this.ranks[column] === PEOPLE);
    // Latest years first: where nobody is held then, nobody is before.
    if (people.length > 0) return people.reverse().slice(0, TRIES);
    const known = fractions.filter((f) => this.gains.knows(f));
    const unknown = fractions.filter((f) => !this.gains.knows(f));
    known.sort((a, b) => this.gains.expected(b) - this.gains.expected(a));
    unknown.sort((a, b) => this.rank(a) - this.rank(b));
    if (this.nodes <= FIRST_NODES) return [...known, ...unknown].slice(0, FIRST_TRIES);
    return [...known.slice(0, TRIES), ...unknown.slice(0, TRIES)];
  }

  /** Columns at no whole number; of a node that was not decided, only those not branched on since. */
  private fractions({ values, ranges }: Node): Fraction[] {
    return this.whole
      .map((column) => ({ column, value: values[column] ?? 0 }))
      .filter(({ column, value }) => {
        const [lower, upper] = this.rangeOf(ranges, column);
        const inside = lower <= value && value <= upper;
        return inside && Math.abs(value - Math.round(value)) > WHOLE;
      });
  }

  private rank({ column, value }: Fraction): number {
    return (this.ranks[column] ?? 0) + Math.abs(value - Math.floor(value) - 0.5);
  }

  private split(node: Node, { column, value }: Fraction): (Node | null)[] {
    const [lower, upper] = this.rangeOf(node.ranges, column);
    const sides: readonly Range[] = [
      [lower, Math.floor(value)],
      [Math.ceil(value), upper],
    ];
    return sides.map((range) => {
      const solved = this.solved(new Map([...node.ranges, [column, range]]), node);
      return solved && solved.bound > this.worth() ? solved : null;
    });
  }

  private rangeOf(ranges: ReadonlyMap<number, Range>, column: number): Range {
    const { lower, upper } = this.of.model;
    return ranges.get(column) ?? [lower[column] ?? 0, upper[column] ?? Infinity];
  }

  /** The node of some ranges; null where it has no plan; as its parent where it was not decided. */
  private solved(ranges: ReadonlyMap<number, Range>, parent: Node): Node | null;
  private solved(ranges: ReadonlyMap<number, Range>, parent: null): Node | null | undefined;
  private solved(ranges: ReadonlyMap<number, Range>, parent: Node | null): Node | null | undefined {
    this.apply(ranges);
    const outcome = this.lp.solve(this.of.patience);
    if (outcome.kind === 'infeasible') return null;
    if (outcome.kind === 'undecided') return parent ? { ...parent, ranges } : undefined;
    const bound = Math.min(parent?.bound ?? Infinity, this.sign * outcome.objective);
    const withLife = Float64Array.from(this.of.lives, (column) => {
      const cost = Math.max(0, -this.sign * (outcome.columnDuals[column] ?? 0));
      return bound - cost;
    });
    return { ranges, bound, withLife, values: outcome.values };
  }

  private apply(ranges: ReadonlyMap<number, Range>): void {
    for (const column of this.applied.keys()) {
      if (!ranges.has(column)) this.lp.setColumn(column, ...this.rangeOf(new Map(), column));
    }
    for (const [column, range] of ranges) {
      const before = this.applied.get(column);
      if (before?.[0] === range[0] && before[1] === range[1]) continue;
      this.lp.setColumn(column, ...range);
    }
    this.applied = ranges;
  }

  private outcome(open: readonly Node[]): TreeOutcome {
    const { lives } = this.of;
    const best = [...open].sort((a, b) => b.bound - a.bound)[0];
    const withLife = lives.map((_, i) =>
      open.reduce((most, node) => Math.max(most, node.withLife[i] ?? 0), -Infinity),
    );
    return {
      bound: this.sign * (best?.bound ?? Infinity),
      withLife: Float64Array.from(withLife, (w) => this.sign * w),
      costOf: Float64Array.from(lives, (_, i) => (best ? best.bound - (best.withLife[i] ?? 0) : 0)),
      valueOf: Float64Array.from(lives, (column) => best?.values[column] ?? 0),
    };
  }
}
