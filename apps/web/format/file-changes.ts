import type { RepairRow } from '#explain/questions/conflicts/answer.js';
import type { FileChange } from '#explain/questions/conflicts/changes.js';
import { strings } from '../strings.data.js';
import { dollars, listInWords, wholeNumber } from './numbers.js';

const words = strings.conflicts.changes;

/** What to write into the campus file, as whoever edits it would be told. */
export function changeInWords(change: FileChange, lets: RepairRow['lets']): string {
  switch (change.change) {
    case 'aim':
      return words.aim(lets.find(({ id }) => id === change.commitment)?.name ?? change.commitment);
    case 'open-years':
      return words.openYears;
    case 'add-fund':
      return words.addFund(
        listInWords(change.inflows.map((i) => words.inflow(dollars(i.dollars), fiscal(i.year)))),
      );
    case 'add-people': {
      const hours = Object.entries(change.hours).map(([season, h]) =>
        words.hours(wholeNumber(h), season),
      );
      return words.addPeople(listInWords(hours), fiscal(change.fromYear));
    }
    case 'give-compost':
      return words.giveCompost(wholeNumber(change.mostCubicYardsPerSeason));
  }
}

const fiscal = strings.futures.fiscal;
