import { useState, type ReactNode } from 'react';
import type { FuturesResult, SeasonCare } from '#futures/results/answer.js';
import type { Spread } from '#futures/results/share.js';
import type { Band, Range } from '../../../charts/bands/band-drawing.js';
import { BandFigure } from '../../../charts/bands/band-figure.js';
import { capitalized } from '../../../format/numbers.js';
import { hoursToTen, shareWithError } from '../../../format/sampled.js';
import { DataTable, type Column } from '../../../parts/data-table.js';
import { strings } from '../../../strings.data.js';
import { SeasonPicker } from '../../../sections/season-picker.js';

const words = strings.futures;

const columns: readonly Column[] = [
  { head: words.period, kind: 'head' },
  ...[words.wanted, words.there].flatMap((what) =>
    [words.low(what), words.middle(what), words.high(what)].map(
      (head) => ({ head, kind: 'number' }) as const,
    ),
  ),
  { head: words.undone, kind: 'number' },
  { head: words.short, kind: 'text' },
  { head: words.error, kind: 'number' },
];

/** Hours of care that are wanted against the hours there, as they range over the futures. */
export function CareInFutures({ result }: { readonly result: FuturesResult }): ReactNode {
  const names = seasonsOf(result);
  const [choice, setChoice] = useState(names[0] ?? '');
  const rows = result.seasons.filter(({ season }) => season === choice);
  const bands: readonly Band[] = [
    { name: words.wantedBand, look: 'hatched', ranges: rows.map(({ wanted }) => range(wanted)) },
    { name: words.thereBand, look: 'edged', ranges: rows.map(({ there }) => range(there)) },
  ];
  const name = capitalized(choice);
  return (
    <>
      <h3>{words.care}</h3>
      <SeasonPicker choices={names} choice={choice} onChoose={setChoice} />
      <p>{shortInWords(result)}</p>
      <BandFigure
        title={words.careTitle(name)}
        description={words.careDescription}
        axis={strings.care.axis}
        periods={rows.map(({ label, year }) => ({ label, year: words.fiscal(year) }))}
        bands={bands}
      />
      <details>
        <summary>{words.careTable(choice)}</summary>
        <DataTable caption={words.careCaption(name)} columns={columns} rows={rows.map(tableRow)} />
      </details>
    </>
  );
}

/** Summer first where there is one: it is the season that tells. */
function seasonsOf({ seasons }: FuturesResult): readonly string[] {
  const names = [...new Set(seasons.map(({ season }) => season))];
  const summer = names.filter((name) => name.toLowerCase() === 'summer');
  return [...summer, ...names.filter((name) => !summer.includes(name))];
}

function shortInWords({ firstShort }: FuturesResult): string {
  if (firstShort === null) return words.neverShort;
  return words.firstShort(firstShort.label, shareWithError(firstShort.short));
}

const range = ({ p10, p50, p90 }: Spread): Range => ({
  low: p10.value,
  middle: p50.value,
  high: p90.value,
});

const values = ({ p10, p50, p90 }: Spread): readonly number[] => [p10.value, p50.value, p90.value];

function tableRow({ label, wanted, there, unserved, short }: SeasonCare) {
  const hours = [...values(wanted), ...values(there), unserved.p90.value];
  const error = Math.max(...[wanted, there].map(widest), halfWidth(unserved.p90));
  return {
    key: label,
    cells: [label, ...hours.map(hoursToTen), shareWithError(short), `±${hoursToTen(error)}`],
  };
}

const widest = ({ p10, p50, p90 }: Spread): number => Math.max(...[p10, p50, p90].map(halfWidth));

const halfWidth = ({ low, high }: Spread['p10']): number => (high - low) / 2;
