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
 * filter). What is left is a smallest set wherever every test was decided.
 */
export async function smallestWithin<M>(
  impossible: ReadonlySet<M>,
  oracle: Oracle<M>,
): Promise<ConflictSet<M>> {
  let rest = impossible;
  const queue = [...impossible];
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

function without<M>(set: ReadonlySet<M>, member: M): Set<M> {
  return new Set([...set].filter((m) => m !== member));
}

/**
 * Smallest conflicting sets and smallest repairs of a set of members, by a tree of removals: a removal
 * that leaves a conflict gives another smallest set, whose members are removed in turn (Reiter 1987).
 * `mostRemoved` bounds the size of a repair; `goOn` may end the search early.
 */
export async function conflictsAmong<M>(
  all: readonly M[],
  oracle: Oracle<M>,
  limits: { readonly mostRemoved: number; readonly goOn: () => boolean },
): Promise<Conflicts<M>> {
  const sets: ConflictSet<M>[] = [];
  const repairs: M[][] = [];
  let complete = true;
  let level: M[][] = [[]];
  for (let size = 0; size <= limits.mostRemoved && level.length > 0; size++) {
    const next: M[][] = [];
    for (const removed of level) {
      if (repairs.some((r) => r.every((m) => removed.includes(m)))) continue;
      const rest = new Set(all.filter((m) => !removed.includes(m)));
      const known = sets.find((s) => s.members.every((m) => rest.has(m)));
      const told = known ? 'impossible' : oracle.recall(rest);
      const verdict = told ?? (limits.goOn() ? await oracle.ask(rest) : 'unknown');
      if (verdict === 'possible') repairs.push(removed);
      if (verdict === 'unknown') complete = false;
      if (verdict !== 'impossible') continue;
      if (!known && !limits.goOn()) complete = false;
      const found = known ?? (limits.goOn() ? await smallestWithin(rest, oracle) : undefined);
      if (!found) continue;
      if (!known) sets.push(found);
      next.push(...found.members.map((m) => [...removed, m]));
    }
    if (size === limits.mostRemoved && next.length > 0) complete = false;
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
