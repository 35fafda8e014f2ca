/** Whether the members of a set can all hold. `unknown`: neither shown nor ruled out. */
export type Verdict = 'possible' | 'impossible' | 'unknown';

/** A smallest set that cannot all hold: without any one of its members the rest can. */
export interface ConflictSet<M> {
  readonly members: readonly M[];
  /** Members whose removal was shown to help by a plan; for the others that is not decided. */
  readonly necessary: readonly M[];
}

export interface Conflicts<M> {
  readonly sets: readonly ConflictSet<M>[];
  /** Smallest sets whose removal lets a plan exist, fewest members first. */
  readonly repairs: readonly (readonly M[])[];
  /** All sets and repairs up to the size looked at are there. */
  readonly complete: boolean;
}

/** Asks whether the members of a set can all hold; answers are remembered and carried to sets within and around. */
export class Oracle<M> {
  private readonly possible: ReadonlySet<M>[] = [];
  private readonly impossible: ReadonlySet<M>[] = [];
  /** Not decided once is not asked again: it took its time in vain. */
  private readonly undecided: ReadonlySet<M>[] = [];

  constructor(private readonly judge: (kept: ReadonlySet<M>) => Promise<Verdict>) {}

  /** What earlier answers tell; `undefined` where they do not. */
  recall(kept: ReadonlySet<M>): Verdict | undefined {
    if (this.possible.some((known) => isSubset(kept, known))) return 'possible';
    if (this.impossible.some((known) => isSubset(known, kept))) return 'impossible';
    const isSame = (known: ReadonlySet<M>) => known.size === kept.size && isSubset(known, kept);
    return this.undecided.some(isSame) ? 'unknown' : undefined;
  }

  async ask(kept: ReadonlySet<M>): Promise<Verdict> {
    const known = this.recall(kept);
    if (known) return known;
    const verdict = await this.judge(kept);
    if (verdict === 'possible') this.possible.push(kept);
    if (verdict === 'impossible') this.impossible.push(kept);
    if (verdict === 'unknown') this.undecided.push(kept);
    return verdict;
  }
}

function isSubset<M>(a: ReadonlySet<M>, b: ReadonlySet<M>): boolean {
  return [...a].every((m) => b.has(m));
}

/**
 * Drops one member after the other from an impossible set while the rest stays impossible (deletion
 * filter), beginning with the smallest of the likely parts of it that is impossible by itself. What is
 * left is a smallest set wherever every test was decided.
 */
export async function smallestWithin<M>(
  impossible: ReadonlySet<M>,
  oracle: Oracle<M>,
  likely: readonly ReadonlySet<M>[],
): Promise<ConflictSet<M>> {
  let rest = await smallestLikely(impossible, oracle, likely);
  const queue = [...rest];
  for (let member = queue.shift(); member !== undefined; member = queue.shift()) {
    const fewer = without(rest, member);
    const [next] = queue;
    // Two tests side by side: without both, the second is answered where the first may go.
    const fewest = next === undefined ? fewer : without(fewer, next);
    const [one, both] = await Promise.all([oracle.ask(fewer), oracle.ask(fewest)]);
    if (both === 'impossible') rest = fewest;
    else if (one === 'impossible') rest = fewer;
    if (one === 'impossible' || both === 'impossible') queue.shift();
  }
  const members = [...rest];
  const verdicts = await Promise.all(members.map((m) => oracle.ask(without(rest, m))));
  return { members, necessary: members.filter((_, i) => verdicts[i] === 'possible') };
}

/** The smallest of some parts of an impossible set that is impossible by itself; else the set. */
async function smallestLikely<M>(
  impossible: ReadonlySet<M>,
  oracle: Oracle<M>,
  likely: readonly ReadonlySet<M>[],
): Promise<ReadonlySet<M>> {
  const parts = likely.map((part) => new Set([...part].filter((m) => impossible.has(m))));
  const verdicts = await Promise.all(parts.map((part) => oracle.ask(part)));
  const found = parts.filter((_, i) => verdicts[i] === 'impossible');
  return found.reduce((least, part) => (part.size < least.size ? part : least), impossible);
}

function without<M>(set: ReadonlySet<M>, member: M): Set<M> {
  return new Set([...set].filter((m) => m !== member));
}

interface TreeLimits<M> {
  /** Members of a repair at the most. */
  readonly mostRemoved: number;
  /** May end the search early. */
  readonly goOn: () => boolean;
  /** Parts that are likely impossible by themselves, where smaller sets are sought first. Left out: none. */
  readonly likely?: readonly ReadonlySet<M>[];
}

/**
 * Smallest conflicting sets and smallest repairs of a set of members, by a tree of removals: a removal
 * that leaves a conflict gives another smallest set, whose members are removed in turn (Reiter 1987).
 */
export async function conflictsAmong<M>(
  all: readonly M[],
  oracle: Oracle<M>,
  { mostRemoved, goOn, likely = [] }: TreeLimits<M>,
): Promise<Conflicts<M>> {
  const sets: ConflictSet<M>[] = [];
  const repairs: M[][] = [];
  const restOf = (removed: readonly M[]) => new Set(all.filter((m) => !removed.includes(m)));
  const conflictIn = (rest: ReadonlySet<M>) =>
    sets.find((s) => s.members.every((m) => rest.has(m)));
  let complete = true;
  let level: M[][] = [[]];
  for (let size = 0; size <= mostRemoved && level.length > 0; size++) {
    const next: M[][] = [];
    const open = level.filter(
      (removed) => !repairs.some((r) => r.every((m) => removed.includes(m))),
    );
    // All of a level are asked about in any case; together they use all threads.
    const unknown = open.map(restOf).filter((rest) => !conflictIn(rest));
    if (goOn()) await Promise.all(unknown.map((rest) => oracle.ask(rest)));
    for (const removed of open) {
      const rest = restOf(removed);
      const known = conflictIn(rest);
      const verdict = known ? 'impossible' : (oracle.recall(rest) ?? 'unknown');
      if (verdict === 'possible') repairs.push(removed);
      if (verdict === 'unknown') complete = false;
      if (verdict !== 'impossible') continue;
      if (!known && !goOn()) complete = false;
      const found = known ?? (goOn() ? await smallestWithin(rest, oracle, likely) : undefined);
      if (!found) continue;
      if (!known) sets.push(found);
      next.push(...found.members.map((m) => [...removed, m]));
    }
    if (size === mostRemoved && next.length > 0) complete = false;
    level = distinct(next, all);
  }
  return { sets, repairs, complete };
}

/** Each set of removals once, in the order of the members. */
function distinct<M>(removals: readonly (readonly M[])[], all: readonly M[]): M[][] {
  const byKey = new Map(
    removals.map((removed) => {
      const sorted = all.filter((m) => removed.includes(m));
      return [sorted.map((m) => all.indexOf(m)).join(' '), sorted] as const;
    }),
  );
  return [...byKey.values()];
}
