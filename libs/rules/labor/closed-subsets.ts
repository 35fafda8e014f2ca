import type { TaskClass } from '#domain/labor.js';

export type SourceTasks = readonly TaskClass[];

/**
 * The sets of task classes whose subset rows are needed: for each set of sources that some classes
 * call on, the largest set of classes that calls on no other source. Any other set's row follows
 * from these.
 */
export function closedSubsets(
  classes: readonly TaskClass[],
  sources: readonly SourceTasks[],
): ReadonlySet<TaskClass>[] {
  const serversOf = new Map(
    classes.map((c) => [
      c,
      sources.reduce((mask, tasks, i) => (tasks.includes(c) ? mask | (1n << BigInt(i)) : mask), 0n),
    ]),
  );
  const closures = new Map<bigint, ReadonlySet<TaskClass>>();
  for (let pick = 1; pick < 1 << classes.length; pick++) {
    const servers = classes.reduce(
      (mask, c, i) => (pick & (1 << i) ? mask | (serversOf.get(c) ?? 0n) : mask),
      0n,
    );
    if (closures.has(servers)) continue;
    closures.set(
      servers,
      new Set(classes.filter((c) => ((serversOf.get(c) ?? 0n) | servers) === servers)),
    );
  }
  return [...closures.values()];
}
