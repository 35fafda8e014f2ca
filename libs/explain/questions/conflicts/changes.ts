import { plannedYears, yearAt } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { TASK_CLASSES, type LaborPool } from '#domain/labor.js';
import { COST_LINES, type Fund } from '#domain/money.js';
import { withoutFrozenYears } from '#optimizer/solve/relaxations.js';
import { centiHours } from '#units/centihours.js';
import { dollarsToCents } from '#units/cents.js';
import type { FiscalYear } from '#units/fiscal-year.js';

/** One change of the campus file by which a repair is applied: what it names is all that is changed. */
export type FileChange =
  | {
      /** The promise is made an intended one. */
      readonly change: 'aim';
      readonly commitment: string;
    }
  | {
      /** No year of the published plan is frozen. */
      readonly change: 'open-years';
    }
  | {
      /** Money that never lapses and may pay anything, by the year in which it arrives. */
      readonly change: 'add-fund';
      readonly id: string;
      readonly name: string;
      readonly inflows: readonly YearlyDollars[];
    }
  | {
      /** People for any work, from a year on to the end. */
      readonly change: 'add-people';
      readonly id: string;
      readonly name: string;
      readonly fromYear: FiscalYear;
      /** Hours by season id, of every year. */
      readonly hours: Readonly<Record<string, number>>;
    }
  | {
      /** Compost is delivered at no cost, up to so much a season. */
      readonly change: 'give-compost';
      readonly mostCubicYardsPerSeason: number;
    };

export interface YearlyDollars {
  readonly year: FiscalYear;
  readonly dollars: number;
}

export type FundChange = Extract<FileChange, { change: 'add-fund' }>;
export type PeopleChange = Extract<FileChange, { change: 'add-people' }>;

/** Where people come from who are only asked for. */
export const PEOPLE_SOURCE =
  'Hours that a repair of conflicting promises asks for; who works them is still to be settled.';

/** The campus as its file reads after the changes. */
export function withChanges(campus: Campus, changes: readonly FileChange[]): Campus {
  return changes.reduce(withChange, campus);
}

function withChange(campus: Campus, change: FileChange): Campus {
  switch (change.change) {
    case 'aim': {
      const isIt = ({ id }: { readonly id: string }) => id === change.commitment;
      const aim = { strength: 'intended' as const };
      const commitments = campus.commitments.map((c) => (isIt(c) ? { ...c, ...aim } : c));
      return { ...campus, commitments };
    }
    case 'open-years':
      return withoutFrozenYears(campus);
    case 'add-fund':
      return { ...campus, funds: [...campus.funds, fundOf(campus, change)] };
    case 'add-people':
      return { ...campus, pools: [...campus.pools, poolOf(change)] };
    case 'give-compost': {
      const most = { mostBoughtPerSeason: change.mostCubicYardsPerSeason };
      return {
        ...campus,
        compost: { ...campus.compost, ...most, pricePerYard: dollarsToCents(0) },
      };
    }
  }
}

function fundOf({ calendar }: Campus, { id, name, inflows }: FundChange): Fund {
  const lastYear = yearAt(calendar, plannedYears(calendar) - 1);
  const restriction = { lines: COST_LINES, sites: 'any', buildTypes: 'any' } as const;
  return {
    ...{ id, name, kind: 'reserve', status: 'pledged', counted: true, floor: dollarsToCents(0) },
    inflows: inflows.map(({ year, dollars }) => ({
      ...{ year, amount: dollarsToCents(dollars), lastYear, restriction },
    })),
  };
}

function poolOf({ id, name, fromYear, hours }: PeopleChange): LaborPool {
  const bySeason = Object.entries(hours).map(([season, h]) => [season, centiHours(h * 100)]);
  return {
    ...{ id, name, kind: 'staff', tasks: TASK_CLASSES, from: fromYear },
    hours: Object.fromEntries(bySeason) as LaborPool['hours'],
    provenance: { basis: 'judgement', source: PEOPLE_SOURCE },
  };
}

/** The base, or the base with the first number after it that no record has yet. */
export function freeId(taken: readonly { readonly id: string }[], base: string): string {
  const isFree = (id: string) => taken.every((record) => record.id !== id);
  if (isFree(base)) return base;
  const places = Array.from({ length: taken.length + 1 }, (_, i) => `${base}-${i + 2}`);
  return places.find(isFree) ?? base;
}
