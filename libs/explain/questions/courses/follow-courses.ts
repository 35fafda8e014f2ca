import type { Campus } from '#domain/campus.js';
import type { Decisions, Plan } from '#domain/plan.js';
import type { Effort, ResolveAnswer } from '#optimizer/resolve/order.js';
import type { Asked } from '../common/asked.js';
import { planMeasures, type PlanMeasures } from '../common/plan-measures.js';

/** A changed campus that is planned again, to be compared with the campus as it is. */
export interface Course {
  readonly id: string;
  readonly name: string;
  readonly campus: Campus;
  /** Left out: from the plan that is asked about. */
  readonly start?: Decisions;
}

/** What a course came to. */
export interface Followed {
  readonly id: string;
  readonly name: string;
  readonly ending: ResolveAnswer['ending'];
  /** Of the plan found; `null` where there is none. */
  readonly measures: PlanMeasures | null;
  /** Tier values of the plan found, in the order of its own campus. */
  readonly values: readonly number[];
}

/** A course with its verified plan. */
export type FollowedPlan = Followed & { readonly plan?: Plan };

/**
 * Plans every course again with equal work and the same seed, from the same plan. Each is measured by the
 * campus as it is, so that a course is not praised for a promise that it does not have.
 */
export async function followCourses(
  asked: Asked,
  courses: readonly Course[],
  effort: Effort,
): Promise<FollowedPlan[]> {
  let done = 0;
  const orders = courses.map(({ campus, start }) => ({
    campus,
    start: start ?? asked.plan.decisions,
    seed: asked.seed,
    effort,
    wish: 'best' as const,
  }));
  const answers = await asked.resolver.resolve(orders, (place) => {
    done += 1;
    asked.onStep?.(`Planning again: ${courses[place]?.name ?? ''}`, done / courses.length);
  });
  return courses.map(({ id, name, campus }, i) => {
    const { plan, ending = 'not-found', values = [] } = answers[i] ?? {};
    const measures = plan ? planMeasures(measuring(asked.campus, campus), plan) : null;
    return { id, name, ending, measures, values, ...(plan ? { plan } : {}) };
  });
}

/** The campus as it is, which knows besides what a course may make of its sites later. */
function measuring(asIs: Campus, { laterChanges }: Campus): Campus {
  return laterChanges ? { ...asIs, laterChanges } : asIs;
}

/** Names of courses that were not followed to a plan or a proof. */
export function notFollowed(followed: readonly Followed[]): string[] {
  return followed.filter((f) => f.ending === 'not-found').map((f) => f.name);
}

/** Why a course has no plan, as it ends a sentence. */
export function withoutPlan(followed: Followed | undefined): string {
  return followed?.ending === 'impossible'
    ? 'proven that no plan has it'
    : 'not worked out in the time';
}
