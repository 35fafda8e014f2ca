import { suitabilityList, type SuitabilityRow } from '#planning/suitability-list.js';
import { EXIT } from '../exit-codes.js';
import { asJson, type Output } from '../output.js';
import { readCampus } from '../read-files.js';

/** `suitability CAMPUS.json`: how all candidates are suited, before any gate and any plan. */
export async function suitability(
  path: string,
  { json }: { readonly json?: true },
  output: Output,
): Promise<number> {
  const list = suitabilityList((await readCampus(path)).campus);
  if (json) {
    output.out(asJson(list));
    return EXIT.fine;
  }
  output.out(
    `Points of 100 by weighted criteria; ranks in ${list.draws} seeded draws of the weights. No score outweighs a gate.`,
  );
  for (const row of list.sites) for (const line of rowLines(row)) output.out(line);
  return EXIT.fine;
}

function rowLines(row: SuitabilityRow): string[] {
  const share = Math.round(row.topThree * 100);
  return [
    '',
    `${row.rank}  ${row.site} ${row.name}: ${pointsText(row)}`,
    `   rank ${row.rankLow} to ${row.rankHigh} in 9 of 10 draws; among the best three in ${share} %; ${GATES[row.gates]}`,
    `   ${row.contributions.map(contributionText).join(', ')}`,
  ];
}

const GATES = {
  pass: 'no stated gate is open',
  fail: 'a gate fails',
  unknown: 'a gate is not known to pass',
} as const satisfies Record<SuitabilityRow['gates'], string>;

function pointsText({ least, most }: SuitabilityRow): string {
  const [from, to] = [Math.round(least), Math.round(most)];
  return from === to ? `${from} points` : `${from} to ${to} points, as facts are unknown`;
}

function contributionText({
  criterion,
  weight,
  points,
}: SuitabilityRow['contributions'][number]): string {
  const got = points === null ? 'unknown' : String(Math.round(points));
  return `${criterion} ${got} of ${Math.round(weight)}`;
}
