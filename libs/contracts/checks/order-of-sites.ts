import { anError, type Problem } from '#domain/problem.js';
import type { FileView } from './file-view.js';

/** Sites that wait for one another in a circle, or for one that rules them out. */
export function siteOrderProblems(view: FileView): Problem[] {
  return [...cycleProblems(view), ...exclusiveProblems(view)];
}

function cycleProblems({ precedence }: FileView): Problem[] {
  const after = new Map<string, string[]>();
  for (const { before, after: later } of precedence) {
    after.set(before, [...(after.get(before) ?? []), later]);
  }
  const reported = new Set<string>();
  return [...after.keys()].flatMap((start) => {
    const cycle = cycleFrom(start, after);
    if (!cycle || reported.has(membersOf(cycle))) return [];
    reported.add(membersOf(cycle));
    const [first = start, second = start] = cycle;
    const record = `precedence ${first} before ${second}`;
    return [
      anError({ code: 'PRECEDENCE-CYCLE', record, field: 'after', value: second }, [
        `These sites wait for one another in a circle: ${[...cycle, start].join(' before ')}.`,
        'Remove one of the links.',
      ]),
    ];
  });
}

function membersOf(cycle: readonly string[]): string {
  return [...cycle].sort().join();
}

/** Sites on a way from `start` back to itself, shortest way first; undefined where there is none. */
function cycleFrom(
  start: string,
  after: ReadonlyMap<string, readonly string[]>,
): readonly string[] | undefined {
  const ways: (readonly string[])[] = [[start]];
  const seen = new Set<string>();
  for (const way of ways) {
    const here = way.at(-1) ?? start;
    for (const next of after.get(here) ?? []) {
      if (next === start) return way;
      if (!seen.has(next)) ways.push([...way, next]);
      seen.add(next);
    }
  }
  return undefined;
}

function exclusiveProblems({ precedence, exclusiveGroups }: FileView): Problem[] {
  return precedence.flatMap(({ before, after }) => {
    const group = exclusiveGroups.find(
      ({ sites }) => before !== after && sites.includes(before) && sites.includes(after),
    );
    if (!group) return [];
    const record = `precedence ${before} before ${after}`;
    return [
      anError({ code: 'PRECEDENCE-EXCLUSIVE', record, field: 'before', value: before }, [
        `${after} must wait for ${before}, but the exclusive group ${group.id} allows only one of them.`,
        'Remove the one rule or the other.',
      ]),
    ];
  });
}
