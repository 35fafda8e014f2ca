import { counted, dollarsInWords } from '#units/in-words.js';
import type { Asked, Made } from '../common/asked.js';
import { fairEffort, madeBy } from '../common/fair-effort.js';
import type { PlanMeasures } from '../common/plan-measures.js';
import { changesBetween, changesInWords, type MeasureChange } from '../courses/difference.js';
import {
  followCourses,
  notFollowed,
  withoutPlan,
  type FollowedPlan,
} from '../courses/follow-courses.js';
import { leversOf, type Lever } from './levers.js';

/** What one addition buys. */
export interface AdditionRow {
  readonly id: string;
  readonly name: string;
  readonly kind: Lever['kind'];
  readonly measures: PlanMeasures | null;
  /** Against the campus as it is, planned again with equal work. */
  readonly changes: readonly MeasureChange[];
  readonly dollars: number | null;
  /** Sites and promised years bought for each $10,000; `null` where it costs nothing or buys none. */
  readonly sitesPer10000Dollars: number | null;
  readonly yearsPer10000Dollars: number | null;
  readonly askBy: string | null;
  readonly note: string;
  readonly sentence: string;
}

export interface AdditionsAnswer {
  readonly question: 'additions';
  readonly headline: string;
  readonly base: PlanMeasures | null;
  readonly additions: readonly AdditionRow[];
  readonly made: Made;
}

const SHARE = 0.85;

/** What one more of each thing would buy, by planning again with it and comparing whole plans. */
export async function additions(asked: Asked): Promise<AdditionsAnswer> {
  const { campus, plan } = asked;
  const levers = leversOf(campus, plan);
  const effort = await fairEffort(asked, { count: levers.length + 1, share: SHARE });
  const own = { id: 'as-it-is', name: 'the campus as it is', campus };
  const followed = await followCourses(asked, [own, ...levers.map((l) => l.course)], effort);
  const [base, ...others] = followed;
  const rows = levers.map((lever, i) => rowOf(lever, base, others[i]));
  return {
    question: 'additions',
    headline: headlineOf(rows),
    base: base?.measures ?? null,
    additions: rows,
    made: madeBy(effort, [asked.seed], notFollowed(followed)),
  };
}

function rowOf(
  lever: Lever,
  base: FollowedPlan | undefined,
  followed: FollowedPlan | undefined,
): AdditionRow {
  const { course, kind, dollars, askBy, note } = lever;
  const measures = followed?.measures ?? null;
  const changes = base?.measures && measures ? changesBetween(base.measures, measures) : [];
  const changed = (measure: MeasureChange['measure']) =>
    changes.find((c) => c.measure === measure)?.change ?? 0;
  const per = (bought: number) =>
    dollars !== null && dollars > 0 && bought > 0 ? (bought * 10_000) / dollars : null;
  const cost =
    dollars !== null && dollars > 0 ? ` It costs ${dollarsInWords(dollars)} over the plan.` : '';
  const ask = askBy === null ? '' : ` Ask by ${askBy}.`;
  const what = measures ? changesInWords(changes) : withoutPlan(followed);
  return {
    ...{ id: course.id, name: course.name, kind, measures, changes, dollars, askBy, note },
    sitesPer10000Dollars: per(changed('sitesBuilt')),
    yearsPer10000Dollars: per(changed('promiseYearsKept')),
    sentence: `${course.name}: ${what}.${cost}${ask}`,
  };
}

function headlineOf(rows: readonly AdditionRow[]): string {
  const years = (r: AdditionRow) =>
    r.changes.find((c) => c.measure === 'promiseYearsKept')?.change ?? 0;
  const helping = rows.filter((r) => years(r) > 0).sort((a, b) => years(b) - years(a));
  const [most] = helping;
  if (!most) return 'None of these was found to keep the yearly promise in more years.';
  const cheapest = helping
    .filter((r) => r.yearsPer10000Dollars !== null)
    .sort((a, b) => (b.yearsPer10000Dollars ?? 0) - (a.yearsPer10000Dollars ?? 0))[0];
  const best = ` Most for the money: ${cheapest?.name ?? ''}.`;
  return `${counted(helping.length, 'addition')} of ${rows.length} keep the yearly promise in more years; most years: ${most.name}.${cheapest ? best : ''}`;
}
