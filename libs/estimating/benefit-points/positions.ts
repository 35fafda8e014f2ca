import type { BenefitCriterion, BenefitSpec } from '#domain/benefit.js';
import type { Campus } from '#domain/campus.js';
import { careAvoidedReference } from './care-avoided.js';
import { FIRST_SHARE, READY_POSITIONS, type ReadyPosition } from './ready-positions.data.js';

/** Why a campus cannot take a position, in one sentence. */
export interface NoPosition {
  readonly reason: string;
}

/** Ids of the positions that a campus can take: its own, then the ready ones that it can measure. */
export function positionsOf(campus: Campus): string[] {
  const own = campus.benefit.positions?.map(({ id }) => id) ?? [];
  const ready = READY_POSITIONS.filter(
    (p) => !own.includes(p.id) && firstCriteria(campus, p).length > 0,
  );
  return [...own, ...ready.map(({ id }) => id)];
}

/**
 * The campus with the benefit weights of a position: one of its own, or a ready one. A ready position
 * gives half of the 100 points to what it puts first and half to the rest, each half shared out as the
 * file shares it.
 */
export function takePosition(campus: Campus, id: string): Campus | NoPosition {
  const own = campus.benefit.positions?.find((p) => p.id === id);
  if (own) {
    const criteria = stated(campus).map((c) => ({ ...c, weight: own.weights[c.id] ?? 0 }));
    return withBenefit(campus, { criteria, position: id });
  }
  const ready = READY_POSITIONS.find((p) => p.id === id);
  if (!ready) {
    return { reason: `There is no position ${id}; there are ${positionsOf(campus).join(', ')}.` };
  }
  const first = firstCriteria(campus, ready);
  if (first.length === 0) {
    return { reason: `No criterion of the campus measures what ${ready.name} puts first.` };
  }
  const rest = stated(campus).filter((c) => !first.some((f) => f.id === c.id));
  const share = rest.some((c) => c.weight > 0) ? FIRST_SHARE : 1;
  const criteria = [...sharedOut(first, 100 * share), ...sharedOut(rest, 100 * (1 - share))];
  return withBenefit(campus, { criteria, position: id });
}

/** The criteria as the file weighs them, whatever position was taken before. */
function stated({ benefit }: Campus): readonly BenefitCriterion[] {
  return benefit.stated ?? benefit.criteria;
}

function withBenefit(campus: Campus, change: Partial<BenefitSpec>): Campus {
  return { ...campus, benefit: { ...campus.benefit, ...change, stated: stated(campus) } };
}

/** Points shared out in proportion to the weights, or evenly where all are 0. */
function sharedOut(criteria: readonly BenefitCriterion[], points: number): BenefitCriterion[] {
  const total = criteria.reduce((sum, c) => sum + c.weight, 0);
  return criteria.map((c) => ({
    ...c,
    weight: points * (total > 0 ? c.weight / total : 1 / criteria.length),
  }));
}

/** Criteria of what a position puts first. Care avoided can be measured on any campus. */
function firstCriteria(campus: Campus, { first }: ReadyPosition): readonly BenefitCriterion[] {
  const own = stated(campus).filter((c) => first.includes(c.measure));
  if (own.length > 0 || !first.includes('care-avoided')) return own;
  const reference = careAvoidedReference(campus);
  if (reference === 0) return [];
  return [
    {
      id: 'care-avoided',
      name: 'Care avoided',
      measure: 'care-avoided',
      weight: 0,
      reference,
      whenUnknown: 0,
      provenance: {
        basis: 'judgement',
        source: 'hours a year that 10,000 sf of the build type with most care would ask for',
      },
    },
  ];
}
