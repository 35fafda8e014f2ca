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

  constructor(private readonly judge: (kept: ReadonlySet<M>) => Promise<Verdict>) {}

  async ask(kept: ReadonlySet<M>): Promise<Verdict> {
    if (this.possible.some((known) => isSubset(kept, known))) return 'possible';
    if (this.impossible.some((known) => isSubset(known, kept))) return 'impossible';
    const verdict = await this.judge(kept);
    if (verdict === 'possible') this.possible.push(kept);
    if (verdict === 'impossible') this.impossible.push(kept);
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
  for (const member of impossible) {
    const fewer = without(rest, member);
    if ((await oracle.ask(fewer)) === 'impossible') rest = fewer;
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
      if (!limits.goOn()) return { sets, repairs, complete: false };
      const rest = new Set(all.filter((m) => !removed.includes(m)));
      const known = sets.find((s) => s.members.every((m) => rest.has(m)));
      const verdict = known ? 'impossible' : await oracle.ask(rest);
      if (verdict === 'possible') repairs.push(removed);
      if (verdict === 'unknown') complete = false;
      if (verdict !== 'impossible') continue;
      const found = known ?? (await smallestWithin(rest, oracle));
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
