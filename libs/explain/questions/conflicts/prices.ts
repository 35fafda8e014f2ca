import type { Campus } from '#domain/campus.js';
import type { Commitment } from '#domain/commitment.js';
import type { Plan } from '#domain/plan.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { compostNeeds } from '#estimating/plan-needs/compost-needs.js';
import { completePlan } from '#optimizer/allocate/complete-plan.js';
import { commitmentShortfall } from '#rules/commitment-shortfall.js';
import type { Shortfall } from '#rules/shortfall.js';
import { checkStability } from '#rules/stability/check.js';
import { frozenHires, frozenSites } from '#rules/stability/frozen.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import {
  counted,
  dollarsInWords,
  hoursInWords,
  listInWords,
  wholeInWords,
} from '#units/in-words.js';
import { amountOfTier } from '../../overview/tier-words.js';
import type { RepairPrice } from './answer.js';
import { hoursShort } from './changes-for.js';
import type { FileChange, FundChange, PeopleChange } from './changes.js';
import type { Member } from './members.js';

/** A repair with the plan that shows it, and what the file has to say for that plan to pass. */
export interface Repaired {
  readonly lets: readonly Member[];
  readonly changes: readonly FileChange[];
  readonly plan: Plan;
}

/** A price, with the part of the repair's sentence that tells it. */
export interface PricedPart extends RepairPrice {
  readonly words: string;
}

/** What each part of a repair gives up, in the plan found. */
export function pricesOf(campus: Campus, of: Repaired): PricedPart[] {
  return of.lets.map((member) => {
    if (member.kind === 'commitment') return promisePrice(campus, member, of.plan);
    switch (member.id) {
      case 'frozen-years':
        return frozenPrice(campus, member, of.plan);
      case 'money':
        return moneyPrice(member, of);
      case 'labor':
        return laborPrice(campus, member, of);
      default:
        return compostPrice(campus, member, of);
    }
  });
}

type Named = Pick<Member, 'id' | 'name'>;

function promisePrice(campus: Campus, { id, name }: Named, plan: Plan): PricedPart {
  const commitment = campus.commitments.find((c) => c.id === id);
  if (!commitment) throw new RangeError(`no commitment ${id}`);
  const shortfall = commitmentShortfall(campus, plan, commitment);
  const { amount, unit } = shortfall;
  const whole = wholeOf(plan, commitment, shortfall);
  return {
    ...{ id, name, amount, unit, whole, share: Math.min(1, amount / Math.max(1, whole)) },
    words: `“${name}” becomes an aim and no longer a must (${shortOf(commitment, shortfall)})`,
  };
}

/** What an amount is a share of, where the promise itself names no whole: all that the plan has of its kind. */
function wholeOf(plan: Plan, { test }: Commitment, { whole, amount }: Shortfall): number {
  if (whole > 0) return whole;
  const { placements, hires } = plan.decisions;
  if (test.kind === 'only-build-types') return placements.length;
  if (test.kind === 'no-new-positions-before') return hires.reduce((sum, h) => sum + h.count, 0);
  const worked = plan.labor.reduce((sum, { hours }) => sum + hours, 0);
  return test.kind === 'no-unserved-care' ? worked + amount : amount;
}

/** `2 of 18 sites missing`; `18 sites are of other build types`. */
function shortOf({ test }: Commitment, { amount, unit, whole }: Shortfall): string {
  if (amount === 0) return 'the plan found keeps it all the same';
  if (test.kind === 'only-build-types')
    return `${counted(amount, 'site is', 'sites are')} of other build types`;
  if (test.kind === 'no-new-positions-before')
    return `${counted(amount, 'position starts', 'positions start')} sooner`;
  if (test.kind === 'no-unserved-care') return `${amountOfTier(unit, amount)} of care left undone`;
  if (amount >= whole && whole > 0) return 'the plan found goes without it';
  return whole > 0
    ? `${wholeInWords(amount)} of ${amountOfTier(unit, whole)} missing`
    : `${amountOfTier(unit, amount)} missing`;
}

/** Sites and hires of the frozen years that are not as they were published. */
function frozenPrice(campus: Campus, { id, name }: Named, plan: Plan): PricedPart {
  const amount = checkStability(campus, plan).length;
  const published = frozenSites(campus).length + frozenHires(campus).length;
  const made = counted(amount, 'decision is', 'decisions are');
  return {
    ...{ id, name, amount, unit: 'decisions', whole: published },
    share: Math.min(1, amount / Math.max(1, published)),
    words: `the ${name} are open again (${made} made otherwise than published)`,
  };
}

function moneyPrice({ id, name }: Named, { changes, plan }: Repaired): PricedPart {
  const fund = changes.find((c): c is FundChange => c.change === 'add-fund');
  const inflows = fund?.inflows ?? [];
  const amount = inflows.reduce((sum, { dollars }) => sum + dollars, 0);
  const spent = plan.spending.reduce((sum, entry) => sum + entry.amount, 0) / 100;
  return {
    ...{ id, name, amount, unit: 'dollars', whole: spent, share: amount / Math.max(1, spent) },
    words: moneyInWords(inflows, amount),
  };
}

/** `$438,000 more is found, in FY33 to FY52, at most $40,000 in FY44`. */
function moneyInWords(inflows: FundChange['inflows'], total: number): string {
  const [first, last] = [inflows.at(0), inflows.at(-1)];
  if (!first || !last) return 'money may be found, which the plan found does not need';
  const found = `${dollarsInWords(total)} more is found`;
  if (first === last) return `${found} in ${fiscalYearLabel(first.year)}`;
  const most = inflows.reduce((a, b) => (b.dollars > a.dollars ? b : a));
  const years = `${fiscalYearLabel(first.year)} to ${fiscalYearLabel(last.year)}`;
  return `${found}, in ${years}, at most ${dollarsInWords(most.dollars)} in ${fiscalYearLabel(most.year)}`;
}

function laborPrice(campus: Campus, { id, name }: Named, of: Repaired): PricedPart {
  const real = completePlan(campus, of.plan.decisions, campusCharges(campus));
  const short = [...hoursShort(campus, of.lets, real).values()];
  const amount = short.reduce((sum, hours) => sum + hours, 0);
  const worked = of.plan.labor.reduce((sum, e) => sum + e.hours, 0) / 100;
  const people = of.changes.find((c): c is PeopleChange => c.change === 'add-people');
  return {
    ...{ id, name, amount, unit: 'hours', whole: worked, share: amount / Math.max(1, worked) },
    words: peopleInWords(campus, people),
  };
}

/** `people are found for 1,314 hours more each summer and 20 hours more each fall, from FY33 on`. */
function peopleInWords({ calendar }: Campus, people: PeopleChange | undefined): string {
  if (!people) return 'people may be found, whom the plan found does not need';
  const seasons = calendar.seasons.flatMap(({ id }) => {
    const hours = people.hours[id] ?? 0;
    return hours > 0 ? [`${hoursInWords(hours)} more each ${id}`] : [];
  });
  return `people are found for ${listInWords(seasons)}, from ${fiscalYearLabel(people.fromYear)} on`;
}

function compostPrice(campus: Campus, { id, name }: Named, of: Repaired): PricedPart {
  const { decisions } = of.plan;
  const given = of.changes.find((c) => c.change === 'give-compost')?.mostCubicYardsPerSeason ?? 0;
  const amount = decisions.purchases.reduce((sum, { cubicYards }) => sum + cubicYards, 0);
  const used = compostNeeds(campus, decisions, campusCharges(campus)).reduce(
    (sum, { builds, topDress }) => sum + (builds + topDress) / 100,
    0,
  );
  return {
    ...{ id, name, amount, unit: 'cubic yards', whole: used, share: amount / Math.max(1, used) },
    words: `${counted(amount, 'cubic yard')} of compost are delivered at no cost over all years, at most ${wholeInWords(given)} in one season`,
  };
}
