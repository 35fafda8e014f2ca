import type { Campus } from '#domain/campus.js';
import type { Asked, Made } from '../common/asked.js';
import { fairEffort, madeBy } from '../common/fair-effort.js';
import { planMeasures, type PlanMeasures } from '../common/plan-measures.js';
import { changesBetween, changesInWords, type MeasureChange } from '../courses/difference.js';

/** A campus after one more change, in the declared order. */
export interface ChangeStep {
  /** What changed: `funds capital-allotment`. */
  readonly change: string;
  readonly campus: Campus;
}

/** What one change made, those before it already in force. */
export interface AttributedChange {
  readonly change: string;
  readonly measures: PlanMeasures | null;
  readonly changes: readonly MeasureChange[];
  readonly sentence: string;
}

/** What changed between two versions of a campus, change by change. */
export interface ChangesAttributed {
  readonly question: 'compare-campuses';
  readonly headline: string;
  readonly first: PlanMeasures | null;
  readonly last: PlanMeasures | null;
  readonly changes: readonly MeasureChange[];
  readonly steps: readonly AttributedChange[];
  readonly order: string;
  readonly made: Made;
}

const SHARE = 0.85;

/**
 * Turns the changes on one at a time in their order, plans the campus again after each with equal work,
 * each from the plan before, and tells what each made. Another order would share the effects out
 * otherwise where changes work on each other; the sum stays.
 */
export async function attributeChanges(
  asked: Asked,
  steps: readonly ChangeStep[],
): Promise<ChangesAttributed> {
  const effort = await fairEffort(asked, {
    count: (steps.length + 1) * asked.resolver.parallel,
    share: SHARE,
  });
  let start = asked.plan.decisions;
  const measured: (PlanMeasures | null)[] = [];
  for (const [i, campus] of [asked.campus, ...steps.map((s) => s.campus)].entries()) {
    asked.onStep?.(`Planning with ${i} of ${steps.length} changes`, i / (steps.length + 1));
    const [answer] = await asked.resolver.resolve([
      { campus, start, seed: asked.seed, effort, wish: 'best' },
    ]);
    measured.push(answer?.plan ? planMeasures(campus, answer.plan) : null);
    if (answer?.plan) start = answer.plan.decisions;
  }
  const rows = steps.map((step, i) => rowOf(step, measured[i] ?? null, measured[i + 1] ?? null));
  const [first = null, last = null] = [measured[0], measured.at(-1)];
  const changes = first && last ? changesBetween(first, last) : [];
  return {
    question: 'compare-campuses',
    headline: `With all ${steps.length} changes: ${changesInWords(changes)}.`,
    ...{ first, last, changes, steps: rows },
    order: 'Changes are turned on in the order of the campus file, each on top of those before it.',
    made: madeBy(
      effort,
      [asked.seed],
      rows.filter((r) => r.measures === null).map((r) => r.change),
    ),
  };
}

function rowOf(
  { change }: ChangeStep,
  before: PlanMeasures | null,
  after: PlanMeasures | null,
): AttributedChange {
  const changes = before && after ? changesBetween(before, after) : [];
  const what = after ? changesInWords(changes) : 'no plan found';
  return { change, measures: after, changes, sentence: `${change}: ${what}.` };
}
