import type { CampusFile } from '#contracts/campus-file.schema.js';
import { fromFiscalYear } from '#contracts/conversion/values.js';
import { COST_LINES } from '#domain/money.js';
import { TASK_CLASSES } from '#domain/labor.js';
import {
  PEOPLE_SOURCE,
  type FileChange,
  type FundChange,
  type PeopleChange,
} from '#explain/questions/conflicts/changes.js';

/** A campus file after the changes of a repair; nothing else of it is touched. */
export function repairedFile(file: CampusFile, changes: readonly FileChange[]): CampusFile {
  return changes.reduce(changed, file);
}

function changed(file: CampusFile, change: FileChange): CampusFile {
  switch (change.change) {
    case 'aim': {
      const aim = { strength: 'intended' as const };
      const commitments = file.commitments.map((c) =>
        c.id === change.commitment ? { ...c, ...aim } : c,
      );
      return { ...file, commitments };
    }
    case 'open-years':
      return withOpenYears(file);
    case 'add-fund':
      return { ...file, funds: [...file.funds, fundRecord(change)] };
    case 'add-people':
      return { ...file, pools: [...file.pools, poolRecord(change)] };
    case 'give-compost': {
      const mostBoughtCubicYardsPerSeason = change.mostCubicYardsPerSeason;
      const given = { mostBoughtCubicYardsPerSeason, dollarsPerCubicYard: 0 };
      return { ...file, compost: { ...file.compost, ...given } };
    }
  }
}

function withOpenYears({ published, ...file }: CampusFile): CampusFile {
  if (!published) return file;
  const { frozenThrough: _, ...open } = published;
  return { ...file, published: open };
}

function fundRecord({ id, name, inflows }: FundChange): CampusFile['funds'][number] {
  return {
    ...{ id, name, kind: 'reserve', status: 'pledged', counted: true, openingBalanceDollars: 0 },
    inflows: inflows.map(({ year, dollars }) => ({
      year: fromFiscalYear(year),
      amountDollars: dollars,
    })),
    ...{ carryYears: 'unlimited', feePercent: 0, careSharePercent: 0 },
    restriction: { lines: [...COST_LINES], sites: 'any', buildTypes: 'any' },
    floorDollars: 0,
  };
}

function poolRecord({ id, name, fromYear, hours }: PeopleChange): CampusFile['pools'][number] {
  return {
    ...{ id, name, kind: 'staff', tasks: [...TASK_CLASSES], hours, from: fromFiscalYear(fromYear) },
    provenance: { basis: 'judgement', source: PEOPLE_SOURCE },
  };
}
