import { capitalized, counted, dollarsInWords, listInWords } from '#units/in-words.js';
import type { Figure } from '../../overview/plan-overview.js';
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
import { leversOf } from './levers.js';
import type { Lever } from './lever.js';

/** What one addition buys. */
export interface AdditionRow {
  readonly id: string;
  readonly name: string;
  readonly kind: Lever['kind'];
  /** The numbers that its name and note tell, beside the dollars. */
  readonly figures: readonly Figure[];
  readonly measures: PlanMeasures | null;
  /** Against the campus as it is, planned again with equal work. */
  readonly changes: readonly MeasureChange[];
  readonly dollars: number | null;
  /** Sites and promised years bought for each $10,000; `null` where it costs nothing or buys none. */
  readonly sitesPer10000Dollars: number | null;
  readonly yearsPer10000Dollars: number | null;
  /** Dollars for one more site, and for one more promised year. */
  readonly dollarsPerSite: number | null;
  readonly dollarsPerYear: number | null;
  /** Month by which it must be asked for, or decided where nobody is asked. */
  readonly askBy: string;
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
    headline: headlineOf(rows, base?.measures ?? null),
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
  const { course, kind, dollars, askBy, isAsked } = lever;
  const measures = followed?.measures ?? null;
  const changes = base?.measures && measures ? changesBetween(base.measures, measures) : [];
  const changed = (measure: MeasureChange['measure']) =>
    changes.find((c) => c.measure === measure)?.change ?? 0;
  const [sites, years] = [changed('sitesBuilt'), changed('promiseYearsKept')];
  const costs = dollars !== null && dollars > 0;
  const per = (bought: number) => (costs && bought > 0 ? (bought * 10_000) / dollars : null);
  const dollarsPer = (bought: number) => (costs && bought > 0 ? dollars / bought : null);
  const prices = {
    sitesPer10000Dollars: per(sites),
    yearsPer10000Dollars: per(years),
    dollarsPerSite: dollarsPer(sites),
    dollarsPerYear: dollarsPer(years),
  };
  const what = measures ? changesInWords(changes) : withoutPlan(followed);
  const simplified = simplifiedIn(lever, followed);
  return {
    ...{ id: course.id, name: course.name, kind, measures, changes, dollars, askBy },
    note: noteOf(lever, simplified),
    figures: [...lever.figures, ...(simplified ?? []).map(ageFigure)],
    ...prices,
    sentence: `${capitalized(course.name)}: ${what}.${costInWords(dollars, prices)} ${isAsked ? 'Ask' : 'Decide'} by ${askBy}.`,
  };
}

type Prices = Pick<AdditionRow, 'dollarsPerSite' | 'dollarsPerYear'>;

function costInWords(dollars: number | null, { dollarsPerSite, dollarsPerYear }: Prices): string {
  if (dollars === null || dollars === 0) return '';
  const each = [
    ...(dollarsPerYear === null
      ? []
      : [`${dollarsInWords(dollarsPerYear)} for each promised year`]),
    ...(dollarsPerSite === null ? [] : [`${dollarsInWords(dollarsPerSite)} for each site`]),
  ];
  const shares = each.length > 0 ? `, which is ${listInWords(each)}` : '';
  return ` It costs ${dollarsInWords(dollars)} over the plan${shares}.`;
}

interface Simplified {
  readonly site: string;
  readonly age: number;
}

const ageFigure = ({ site, age }: Simplified): Figure => ({
  what: `${site} simplified at age`,
  value: age,
  unit: 'years',
});

/** Sites that a plan with leave to simplify does simplify; `null` where no plan has that leave. */
function simplifiedIn(
  { kind, course }: Lever,
  followed: FollowedPlan | undefined,
): Simplified[] | null {
  if (kind !== 'simplified' || !followed?.plan) return null;
  const ids = new Set(course.campus.laterChanges?.map(({ id }) => id));
  const before = course.start?.placements.filter((p) => p.change && ids.has(p.change.id)) ?? [];
  const sites = new Set(before.map(({ site }) => site));
  return followed.plan.decisions.placements.flatMap(({ site, change }) =>
    change && sites.has(site) ? [{ site, age: change.age }] : [],
  );
}

/** Leave to simplify is not a duty, so it is said whether the plan found makes use of it. */
function noteOf({ note }: Lever, simplified: readonly Simplified[] | null): string {
  if (simplified === null) return note;
  const used =
    simplified.length === 0
      ? 'The plan found makes no use of it.'
      : `The plan found simplifies ${listInWords(simplified.map(({ site, age }) => `${site} at age ${age}`))}.`;
  return `${note} ${used}`;
}

function headlineOf(rows: readonly AdditionRow[], base: PlanMeasures | null): string {
  if (base === null || rows.every(({ measures }) => measures === null))
    return 'None of these was worked out in the time.';
  if (base.promiseYearsKept === null)
    return 'No yearly promise is on file, so that none can be kept longer; what each addition changes stands beside it.';
  const years = (r: AdditionRow) =>
    r.changes.find((c) => c.measure === 'promiseYearsKept')?.change ?? 0;
  const helping = rows.filter((r) => years(r) > 0).sort((a, b) => years(b) - years(a));
  const [most] = helping;
  const open = rows.filter(({ measures }) => measures === null).length;
  const worked = open === 0 ? 'these' : `the ${rows.length - open} that were worked out`;
  if (!most) return `None of ${worked} was found to keep the yearly promise in more years.`;
  const cheapest = helping
    .filter((r) => r.yearsPer10000Dollars !== null)
    .sort((a, b) => (b.yearsPer10000Dollars ?? 0) - (a.yearsPer10000Dollars ?? 0))[0];
  const best = ` Most for the money: ${cheapest?.name ?? ''}.`;
  const keep = helping.length === 1 ? 'keeps' : 'keep';
  return `${counted(helping.length, 'addition')} of ${rows.length} ${keep} the yearly promise in more years; most years: ${most.name}.${cheapest ? best : ''}`;
}
