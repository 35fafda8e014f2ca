import { TASK_CLASSES, type TaskClass } from '#domain/labor.js';
import type { Campus } from '#domain/campus.js';
import type { ConflictMember } from '#domain/tier.js';
import { yearAt, plannedYears } from '#domain/calendar.js';
import { centiHours } from '#units/centihours.js';
import { cents } from '#units/cents.js';
import type { FiscalYear } from '#units/fiscal-year.js';

/** More of a resource than any plan can use. */
const AMPLE_CENTS = cents(100_000_000_00);
const AMPLE_CENTIHOURS = centiHours(10_000_000);
const AMPLE_YARDS = 10_000;

/** The campus without one promise. */
export function withoutCommitment(campus: Campus, id: string): Campus {
  return { ...campus, commitments: campus.commitments.filter((c) => c.id !== id) };
}

/** Resources that can be thought of as unlimited, to see whether they are what stands in the way. */
export function limitsOf(): { member: ConflictMember; without: (campus: Campus) => Campus }[] {
  const limit = (id: string, name: string) => ({ kind: 'limit' as const, id, name });
  return [
    { member: limit('compost', 'compost made and bought'), without: withAmpleCompost },
    { member: limit('money', 'money in the funds'), without: withAmpleMoney },
    { member: limit('labor', 'hours of the people there are'), without: withAmpleLabor },
  ];
}

/** The frozen years of a published plan, where it has any. */
export function frozenLimit(
  campus: Campus,
): { member: ConflictMember; without: (campus: Campus) => Campus }[] {
  if (campus.published?.frozenThrough === undefined) return [];
  const name = `years that ${campus.published.name} froze`;
  return [{ member: { kind: 'limit', id: 'frozen-years', name }, without: withoutFrozenYears }];
}

/** The campus with every year of its published plan open again. */
export function withoutFrozenYears({ published, ...campus }: Campus): Campus {
  if (!published) return campus;
  const { frozenThrough: _, ...open } = published;
  return { ...campus, published: open };
}

/** More money than any plan can use, from a year on; left out: from the first. */
export function withAmpleMoney(campus: Campus, from?: FiscalYear): Campus {
  const last = yearAt(campus.calendar, plannedYears(campus.calendar) - 1);
  const restriction = {
    lines: ['build', 'care', 'positions', 'compost', 'standing'] as const,
    sites: 'any' as const,
    buildTypes: 'any' as const,
  };
  const ample = {
    id: idOf('ample-money', from),
    name: 'Money without limit',
    kind: 'reserve' as const,
    status: 'received' as const,
    counted: true,
    floor: cents(0),
    inflows: [
      {
        ...{ year: from ?? campus.calendar.firstYear, lastYear: last },
        ...{ amount: AMPLE_CENTS, restriction },
      },
    ],
  };
  return { ...campus, funds: [...campus.funds, ample] };
}

/** More people than any plan can use; for all work and from the first year unless told otherwise. */
export function withAmpleLabor(
  campus: Campus,
  { from, tasks = TASK_CLASSES }: { from?: FiscalYear; tasks?: readonly TaskClass[] } = {},
): Campus {
  const hours = Object.fromEntries(campus.calendar.seasons.map((s) => [s.id, AMPLE_CENTIHOURS]));
  const ample = {
    id: idOf('ample-labor', from, tasks === TASK_CLASSES ? [] : tasks),
    name: 'People without limit',
    kind: 'staff' as const,
    tasks,
    hours,
    ...(from === undefined ? {} : { from }),
    provenance: { basis: 'judgement' as const, source: 'a question, not a plan' },
  };
  return { ...campus, pools: [...campus.pools, ample] };
}

/** What is ample in another way is another pool or fund, so that a campus may have both. */
function idOf(kind: string, from?: FiscalYear, tasks: readonly TaskClass[] = []): string {
  return [kind, ...(from === undefined ? [] : [from]), ...tasks].join('-');
}

export function withAmpleCompost(campus: Campus): Campus {
  const pricePerYard = cents(0);
  return {
    ...campus,
    compost: { ...campus.compost, pricePerYard, mostBoughtPerSeason: AMPLE_YARDS },
  };
}
