import { fiscalYearLabel } from '#units/fiscal-year.js';
import {
  capitalized,
  counted,
  dollarsInWords,
  hoursInWords,
  firstInWords,
  uncapitalized,
} from '#units/in-words.js';
import type { Ground } from './ground.js';
import type { LimitRow, NextYear, PlanOverview, PromiseRow } from './plan-overview.js';
import { preparedAndPlanted } from './site-words.js';

/** The plan in three sentences that a committee would say. */
export function headlineOf(
  ground: Ground,
  parts: {
    readonly next: NextYear;
    readonly limits: readonly LimitRow[];
    readonly promises: readonly PromiseRow[];
  },
): PlanOverview['headline'] {
  return {
    nextSite: nextSiteSentence(ground, parts.next),
    firstLimit: firstLimitSentence(parts.limits),
    promise: promiseHeadline(ground, parts.promises),
  };
}

/** Most sites that a sentence names. */
const MOST_NAMED = 4;

function nextSiteSentence({ campus, years }: Ground, { year, sites }: NextYear): string {
  const [first] = years;
  if (sites.length === 0 || first === undefined) return `No site is to be prepared in ${year}.`;
  const names = sites.map((s) => `${s.site} ${s.name} as ${withArticle(s.buildType)}`);
  return `Next year, build ${firstInWords(names, MOST_NAMED, 'site')}, ${preparedAndPlanted(campus.calendar, first)}.`;
}

/** `a native meadow`, `an edible mixed garden`; names in the plural, such as plots, take none. */
export function withArticle(buildType: string): string {
  const name = uncapitalized(buildType);
  const head = name.split(/ with(?:out)? /)[0] ?? name;
  if (head.endsWith('s')) return name;
  return `${/^[aeiou]/.test(name) ? 'an' : 'a'} ${name}`;
}

function firstLimitSentence(limits: readonly LimitRow[]): string {
  const [first, next] = limits.filter(({ year }) => year !== null);
  if (!first) {
    return 'Nothing runs short within the plan, even without what is only proposed or pledged.';
  }
  const runs = first.resource.endsWith('s') ? 'run' : 'runs';
  const then = next
    ? ` The next limit is ${next.resource}, in ${next.label ?? ''}.`
    : ' Nothing else runs short.';
  return `${capitalized(first.resource)} ${runs} short first: ${shortBy(first)} in ${first.label ?? ''}${proviso(first)}.${then}`;
}

/** What the limit leaves out. */
function proviso({ resource }: LimitRow): string {
  if (resource.endsWith('hours')) return ', without positions that are only proposed';
  if (resource === 'money') return ', without money that is only pledged';
  return resource === 'compost' ? ', without buying any' : '';
}

function shortBy({ shortBy: amount, unit }: LimitRow): string {
  if (amount === null) return '';
  if (unit === 'dollars') return dollarsInWords(amount);
  if (unit === 'hours') return hoursInWords(amount);
  if (unit.startsWith('site')) return counted(amount, 'site');
  return amount < 0.5 ? 'less than 1 cubic yard' : counted(amount, 'cubic yard');
}

/** The yearly promise leads; else the first of all. */
function promiseHeadline({ campus, years }: Ground, promises: readonly PromiseRow[]): string {
  const yearly = campus.commitments.find(({ test }) => test.kind === 'sites-each-year');
  const row = promises.find(({ id }) => id === yearly?.id) ?? promises[0];
  if (!row) return 'No promise is recorded.';
  const last = years.at(-1);
  if (row.status === 'kept' && last !== undefined && row.keptUntil !== null) {
    return `“${row.name}” is kept in every year, to ${row.keptUntil}${row.keptUntil === fiscalYearLabel(last) ? ', the last of the plan' : ''}.`;
  }
  if (row.missedYears.length === 0) return `“${row.name}”: ${row.status}. ${row.sentence}`;
  const until =
    row.keptUntil === null ? 'is missed from the start' : `is kept until ${row.keptUntil}`;
  return `“${row.name}” ${until}, and missed in ${counted(row.missedYears.length, 'year')} of the plan.`;
}
