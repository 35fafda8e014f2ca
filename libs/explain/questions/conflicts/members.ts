import type { Campus } from '#domain/campus.js';
import type { ConflictMember } from '#domain/tier.js';
import { frozenLimit, limitsOf, withoutCommitment } from '#optimizer/solve/relaxations.js';

/** Something that binds and can be thought away: a binding promise, frozen years, or a limit of what there is. */
export interface Member extends ConflictMember {
  readonly without: (campus: Campus) => Campus;
}

/** Everything of a campus that may stand in the way of a plan: promises first, then frozen years, then limits. */
export function membersOf(campus: Campus): Member[] {
  const promises = campus.commitments
    .filter((c) => c.strength === 'binding')
    .map(({ id, name }) => ({
      kind: 'commitment' as const,
      id,
      name,
      without: (c: Campus) => withoutCommitment(c, id),
    }));
  const limits = [...frozenLimit(campus), ...limitsOf()];
  return [...promises, ...limits.map(({ member, without }) => ({ ...member, without }))];
}

/** The campus with only some members still binding. */
export function keeping(campus: Campus, all: readonly Member[], kept: ReadonlySet<Member>): Campus {
  return all.filter((m) => !kept.has(m)).reduce((changed, m) => m.without(changed), campus);
}

/** All promises against one limit at a time: most conflicts are of that kind, and small sets are soonest judged. */
export function likelyConflicts(all: readonly Member[]): ReadonlySet<Member>[] {
  const limits = new Set(limitsOf().map(({ member }) => member.id));
  const isLimit = ({ kind, id }: Member) => kind === 'limit' && limits.has(id);
  return all.filter(isLimit).map((limit) => new Set(all.filter((m) => m === limit || !isLimit(m))));
}
