import type { ChoiceRow, Standing } from './answer.js';

const STANDINGS: readonly Standing[] = [
  'recommended',
  'tied',
  'found-worse',
  'worse',
  'not-found',
  'impossible',
];

const lost = ({ giftsLost }: ChoiceRow) => giftsLost.reduce((sum, { dollars }) => sum + dollars, 0);

/**
 * By standing. Among those that cannot be told apart never by decimals of benefit: by given money that
 * would lapse, then by the hours of care that the site adds, then by id. The others stay as they came,
 * the least worse first.
 */
export function inOrder(rows: readonly ChoiceRow[]): ChoiceRow[] {
  const place = ({ standing }: ChoiceRow) => STANDINGS.indexOf(standing);
  return rows
    .map((row, came) => ({ row, came }))
    .sort((a, b) => {
      const byStanding = place(a.row) - place(b.row);
      if (byStanding !== 0) return byStanding;
      if (a.row.standing !== 'tied') return a.came - b.came;
      return (
        lost(a.row) - lost(b.row) ||
        a.row.busySeasonHours - b.row.busySeasonHours ||
        (a.row.id < b.row.id ? -1 : 1)
      );
    })
    .map(({ row }) => row);
}
