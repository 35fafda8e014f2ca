/**
 * The changes of a repair as written into a campus file: read back, it is the campus with the changes, to
 * the last field. The reader of campus files, which knows nothing of repairs, is the outside judge.
 */
import { expect, test } from 'vitest';
import type { Campus } from '#domain/campus.js';
import { withChanges, type FileChange } from '#explain/questions/conflicts/changes.js';
import { loadCampusFile } from '#planning/load-campus-file.js';
import { repairedFile } from '#planning/repaired-file.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { smallCampus } from '../support/cli/small-campus.js';

function frozen(file: ReturnType<typeof smallCampus>): void {
  file.published = {
    ...{ name: 'Plan 2027', date: '2027-01-15', frozenThrough: 'FY2028' },
    ...{ placements: [], hires: [], announcedWeight: 1, otherWeight: 1 },
  };
}

const file = smallCampus(frozen);
const CHANGES: Readonly<Record<FileChange['change'], FileChange>> = {
  aim: { change: 'aim', commitment: file.commitments[0]!.id },
  'open-years': { change: 'open-years' },
  'add-fund': {
    ...{ change: 'add-fund', id: 'money-to-find', name: 'Money to be found' },
    inflows: [
      { year: fiscalYear(2029), dollars: 12_000 },
      { year: fiscalYear(2031), dollars: 3000 },
    ],
  },
  'add-people': {
    ...{ change: 'add-people', id: 'people-to-find', name: 'People to be found' },
    ...{ fromYear: fiscalYear(2030), hours: { summer: 120, fall: 7 } },
  },
  'give-compost': { change: 'give-compost', mostCubicYardsPerSeason: 77 },
};

function read(of: object): Campus {
  const load = loadCampusFile(JSON.stringify(of));
  if (!load.ok) throw new Error(JSON.stringify(load.problems));
  return load.campus;
}

test.each(Object.values(CHANGES))(
  '$change: the file that is written reads as the campus',
  (change) => {
    const before = JSON.stringify(file);
    const changed = repairedFile(file, [change]);
    expect(JSON.stringify(file)).toBe(before);
    expect(JSON.stringify(changed)).not.toBe(before);
    expect(read(changed)).toEqual(withChanges(read(file), [change]));
  },
);

test('all changes of one repair are written', () => {
  const all = Object.values(CHANGES);
  expect(read(repairedFile(file, all))).toEqual(withChanges(read(file), all));
});
