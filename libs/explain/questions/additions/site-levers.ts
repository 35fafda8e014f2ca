import {
  plannedSeasons,
  plantIndex,
  prepareIndex,
  seasonInstance,
  seasonStart,
  yearIndexOf,
} from '#domain/calendar.js';
import { buildType, candidate, type Campus } from '#domain/campus.js';
import { CHANGE_AGES, type LaterChange } from '#domain/later-change.js';
import type { Placement, Plan } from '#domain/plan.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { settledCare } from '#estimating/site-charges/type-profile.js';
import { possibleLifecycles } from '#optimizer/columns/lifecycles.js';
import { cents, centsToDollars } from '#units/cents.js';
import { monthInWords } from '#units/dates-in-words.js';
import { fiscalYearLabel, yearsLater } from '#units/fiscal-year.js';
import { uncapitalized } from '#units/in-words.js';
import { yearlyPromise } from '../limits/prefix.js';
import { skippingYears } from '../promises/skipping.js';
import { ASSUMED, type Lever } from './lever.js';

/** Sites that a lever changes. */
const SITES = 2;

/** What may be done with less: on sites of the plan, and in a year of the promise. */
export function siteLevers(campus: Campus, plan: Plan): Lever[] {
  const lightest = lightestTypes(campus, plan);
  return [
    ...lighterLevers(campus, lightest),
    ...simplifiedLevers(campus, plan, lightest),
    ...skipLevers(campus),
  ];
}

/** A site of the plan, and the type open to it that asks for least care. */
interface Lightening {
  readonly placement: Placement;
  readonly type: string;
  /** Settled hours a year that the type saves. */
  readonly saved: number;
}

/** Sites of the plan without those promised by name, those first whose care another type lightens most. */
function lightestTypes(campus: Campus, plan: Plan): Lightening[] {
  const charges = campusCharges(campus);
  const settled = (site: string, type: string) => {
    const { areaSqFt, profile } = charges.of(site, type);
    return areaSqFt * settledCare(profile, campus.calendar.seasons.length);
  };
  const possible = possibleLifecycles(campus, charges);
  const named = new Set(
    campus.commitments.flatMap(({ test }) => (test.kind === 'named-site' ? [test.site] : [])),
  );
  const free = plan.decisions.placements.filter((p) => !named.has(p.site));
  const found = free.flatMap((placement): Lightening[] => {
    const { site } = placement;
    const types = [...new Set(possible.filter((l) => l.site === site).map((l) => l.buildType))];
    const [type] = types.sort((a, b) => settled(site, a) - settled(site, b));
    if (type === undefined) return [];
    const saved = settled(site, placement.buildType) - settled(site, type);
    return saved > 0 ? [{ placement, type, saved }] : [];
  });
  return found.sort((a, b) => b.saved - a.saved);
}

const typeName = (campus: Campus, id: string) => uncapitalized(buildType(campus, id).name);

const monthOf = (campus: Campus, season: number) =>
  monthInWords(seasonStart(campus.calendar, seasonInstance(campus.calendar, season)));

/** The two sites with most care as the lightest type that each may become. */
function lighterLevers(campus: Campus, lightest: readonly Lightening[]): Lever[] {
  const chosen = lightest.slice(0, SITES);
  if (chosen.length === 0) return [];
  const typeOf = new Map(chosen.map((c) => [c.placement.site, c.type]));
  const candidates = campus.candidates.map((c) => {
    const only = typeOf.get(c.id);
    return only === undefined ? c : { ...c, buildTypes: [only] };
  });
  const names = chosen.map(
    ({ placement, type }) => `${placement.site} as ${typeName(campus, type)}`,
  );
  const first = Math.min(
    ...chosen.map(({ placement }) => yearIndexOf(campus.calendar, placement.year)),
  );
  return [
    {
      course: {
        id: 'lighter',
        name: `a lighter build: ${names.join(' and ')}`,
        campus: { ...campus, candidates },
      },
      figures: [],
      kind: 'lighter',
      dollars: 0,
      askBy: monthOf(campus, prepareIndex(campus.calendar, first)),
      isAsked: false,
      note: 'The sites of this plan, without those promised by name, whose care another type lightens most.',
    },
  ];
}

/** The two sites with most care built as planned, and planted anew as the lightest type some years later. */
function simplifiedLevers(campus: Campus, plan: Plan, lightest: readonly Lightening[]): Lever[] {
  const { calendar } = campus;
  const end = plannedSeasons(calendar).length;
  const chosen = lightest.flatMap((of) => {
    const planted = plantIndex(calendar, yearIndexOf(calendar, of.placement.year));
    const ages = CHANGE_AGES.filter((age) => planted + age * calendar.seasons.length < end);
    const [age] = ages;
    return age === undefined || of.placement.change ? [] : [{ ...of, age, ages, planted }];
  });
  const two = chosen.slice(0, SITES);
  if (two.length === 0) return [];
  const changeOf = new Map(two.map((of) => [of.placement.site, changeTo(campus, of)]));
  const candidates = campus.candidates.map((c) => {
    const change = changeOf.get(c.id);
    return change ? { ...c, laterChanges: [...(c.laterChanges ?? []), change.id] } : c;
  });
  const placements = plan.decisions.placements.map((p) => {
    const own = two.find((of) => of.placement === p);
    const change = changeOf.get(p.site);
    return own && change ? { ...p, change: { id: change.id, age: own.age } } : p;
  });
  const laterChanges = [...(campus.laterChanges ?? []), ...changeOf.values()];
  const names = two.map((of) => `${of.placement.site} to ${typeName(campus, of.type)}`);
  const cost = two.reduce(
    (sum, { placement, type }) =>
      sum + candidate(campus, placement.site).areaSqFt * buildType(campus, type).costPerSqFt,
    0,
  );
  return [
    {
      course: {
        id: 'simplified',
        name: `leave to simplify sites after some years: ${names.join(' and ')}`,
        campus: { ...campus, candidates, laterChanges },
        start: { ...plan.decisions, placements },
      },
      figures: [],
      kind: 'simplified',
      dollars: centsToDollars(cents(Math.round(cost))),
      askBy: monthOf(
        campus,
        Math.min(...two.map((of) => of.planted + of.age * calendar.seasons.length)),
      ),
      isAsked: false,
      note: 'Built as planned, and replanted in some later year; counted at what building the lighter type costs, which care money of this plan pays.',
    },
  ];
}

/** What simplifying costs is not in a campus file, so it is taken to cost what building the type does. */
function changeTo(
  campus: Campus,
  { placement, type, ages }: Lightening & Pick<LaterChange, 'ages'>,
): LaterChange {
  const becomes = buildType(campus, type);
  return {
    id: `question-simplify-${placement.site}`,
    name: `Simplified to ${uncapitalized(becomes.name)}`,
    buildType: type,
    from: [placement.buildType],
    ages,
    costPerSqFt: becomes.costPerSqFt,
    hoursPer1000SqFt: becomes.plantHoursPer1000SqFt,
    provenance: ASSUMED,
  };
}

/** The second year of the plan without the yearly promise; none where nothing was promised for it. */
function skipLevers(campus: Campus): Lever[] {
  const promise = yearlyPromise(campus);
  const year = yearsLater(campus.calendar.firstYear, 1);
  const isPromised = campus.commitments.some(({ id }) => id === promise.id);
  if (!isPromised || year < promise.test.from || year > promise.test.to) return [];
  const label = fiscalYearLabel(year);
  const lever: Lever = {
    course: {
      id: 'skip',
      name: `the promise let go in ${label} alone`,
      campus: skippingYears(campus, promise, [year]),
    },
    figures: [{ what: 'let go in', value: label, unit: 'label' }],
    kind: 'skip',
    dollars: 0,
    askBy: monthOf(campus, prepareIndex(campus.calendar, 1)),
    isAsked: false,
    note: 'A site may still be built in that year; it need not be.',
  };
  return [lever];
}
