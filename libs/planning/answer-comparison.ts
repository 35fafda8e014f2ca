import type { Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import type { Asked } from '#explain/questions/common/asked.js';
import {
  attributeChanges,
  type ChangesAttributed,
} from '#explain/questions/compare/attribute-changes.js';
import { comparePlans, type PlansCompared } from '#explain/questions/compare/compare-plans.js';
import { campusChanges } from './campus-changes.js';

/** What differs between two plans of one campus. */
export function answerPlans(campus: Campus, first: Plan, second: Plan): PlansCompared {
  return comparePlans(campus, first, second);
}

/** What each change between two versions of a campus file makes, one on top of the other. */
export function answerCampusChanges(
  asked: Asked,
  { first, second }: { readonly first: unknown; readonly second: unknown },
): Promise<ChangesAttributed> {
  return attributeChanges(asked, campusChanges(first, second));
}
