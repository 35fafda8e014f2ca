/** The people of one position. */
export interface PeopleByYear {
  /** One column for each year, in order of time. */
  readonly columns: readonly number[];
  /** Whether whoever is hired stays, so that no year has fewer than the one before. */
  readonly stay: boolean;
}

/** People by column. */
export type People = ReadonlyMap<number, number>;

/** The best point of a relaxation with some columns held. */
export interface Point {
  readonly worth: number;
  readonly values: Float64Array;
  /** By column: what one more were worth, at the most. */
  readonly gains: Float64Array;
}

export interface PeopleSearch {
  readonly people: readonly PeopleByYear[];
  /** Bounds by column, both included. */
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  /** Holds columns at these people from now on. */
  readonly hold: (people: People) => void;
  /** The best point with the people that are held; `undefined`: there is none. */
  readonly solved: () => Point | undefined;
  readonly done: () => boolean;
}

/** One more or one fewer over a run of years. */
interface Move {
  readonly key: string;
  readonly columns: readonly number[];
  readonly step: 1 | -1;
  /** What it is worth at the most. */
  readonly gain: number;
}

/** Moves without a gain, in a row, after which people are left as they are. */
const MOST_MISSES = 12;

/** Share of the worth of a point below which a gain is none. */
const NO_GAIN = 1e-7;

/**
 * Betters whole people in a relaxation: one more or one fewer over a run of years, as long as that gains.
 * What a relaxation says one more were worth in each year tells which runs to try first.
 *
 * @param start people to begin from
 * @returns the point of the best people, who are held then; `undefined`: the first admit no point
 */
export function settlePeople(start: People, of: PeopleSearch): Point | undefined {
  of.hold(start);
  let at = of.solved();
  if (!at) return undefined;
  const people = new Map(start);
  const failed = new Set<string>();
  for (let misses = 0; misses < MOST_MISSES && !of.done();) {
    const move = mostPromising(movesFrom(people, at, of), failed);
    const least = NO_GAIN * Math.abs(at.worth);
    if (!move || move.gain <= least) break;
    const before = new Map(move.columns.map((c) => [c, people.get(c) ?? 0]));
    const after = new Map([...before].map(([c, count]) => [c, count + move.step]));
    of.hold(after);
    const next = of.solved();
    if (next && next.worth > at.worth + least) {
      for (const [column, count] of after) people.set(column, count);
      at = next;
      misses = 0;
    } else {
      of.hold(before);
      failed.add(move.key);
      misses += 1;
    }
  }
  return at;
}

function mostPromising(moves: Iterable<Move>, failed: ReadonlySet<string>): Move | undefined {
  let best: Move | undefined;
  for (const move of moves)
    if (!failed.has(move.key) && (!best || move.gain > best.gain)) best = move;
  return best;
}

/** Of each position, the best run of about each length: runs that differ by a year or two promise the same. */
function* movesFrom(people: People, { gains }: Point, of: PeopleSearch): Generator<Move> {
  for (const [position, byYear] of of.people.entries()) {
    for (const step of [1, -1] as const) {
      for (const { first, end, gain } of bestRuns(byYear, { ...of, people, gains, step })) {
        const key = `${position} ${step} ${first} ${end}`;
        yield { key, step, gain, columns: byYear.columns.slice(first, end) };
      }
    }
  }
}

interface Run {
  readonly first: number;
  /** Not included. */
  readonly end: number;
  readonly gain: number;
}

interface RunsOf extends Pick<PeopleSearch, 'lower' | 'upper'>, Pick<Point, 'gains'> {
  readonly people: People;
  readonly step: 1 | -1;
}

function bestRuns({ columns, stay }: PeopleByYear, of: RunsOf): Iterable<Run> {
  const { people, gains, step } = of;
  const best = new Map<number, Run>();
  const held = columns.map((column) => people.get(column) ?? 0);
  for (let first = 0; first < columns.length; first++) {
    if (stay && step < 0 && first > 0 && held[first] === held[first - 1]) continue;
    let gain = 0;
    for (let end = first + 1; end <= columns.length && mayStep(columns[end - 1] ?? 0, of); end++) {
      gain += step * (gains[columns[end - 1] ?? 0] ?? 0);
      if (stay && step > 0 && end < columns.length && held[end] === held[end - 1]) continue;
      const length = Math.floor(Math.log2(end - first));
      if (gain > (best.get(length)?.gain ?? 0)) best.set(length, { first, end, gain });
    }
  }
  return best.values();
}

function mayStep(column: number, { people, lower, upper, step }: RunsOf): boolean {
  const count = (people.get(column) ?? 0) + step;
  return (lower[column] ?? 0) <= count && count <= (upper[column] ?? Infinity);
}
