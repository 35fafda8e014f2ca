import { useState, type ReactNode } from 'react';
import type { FuturesResult, PromiseShare } from '#futures/results/answer.js';
import type { Band } from '../../../charts/bands/band-drawing.js';
import { BandFigure } from '../../../charts/bands/band-figure.js';
import { shareWithError } from '../../../format/sampled.js';
import { DataTable, type Column } from '../../../parts/data-table.js';
import { ChoiceField, named } from '../../../parts/fields.js';
import { strings } from '../../../strings.data.js';

const words = strings.futures;

interface PromisesInFuturesProps {
  /** The plan kept as it is. */
  readonly fixed: FuturesResult;
  /** The plan made anew each year; null: time did not allow it. */
  readonly mended: FuturesResult | null;
}

/** In what share of the futures a promise is kept through each year. */
export function PromisesInFutures({ fixed, mended }: PromisesInFuturesProps): ReactNode {
  const [chosen, setChosen] = useState(firstOf(fixed)?.id ?? '');
  const promise = fixed.promises.find(({ id }) => id === chosen);
  if (promise === undefined) return null;
  return (
    <>
      <h3>{words.promises}</h3>
      <ChoiceField
        label={words.promise}
        value={chosen}
        options={named(fixed.promises)}
        onText={setChosen}
      />
      <Kept
        promise={promise}
        again={mended?.promises.find(({ id }) => id === chosen) ?? null}
        counts={[fixed.futures, mended?.futures ?? 0]}
      />
    </>
  );
}

/** What was promised in public, and of that what is kept least often. */
function firstOf({ promises }: FuturesResult): PromiseShare | undefined {
  const given = promises.filter((one) => one.public && one.strength !== 'aspiration');
  const kept = ({ keptThrough }: PromiseShare): number => keptThrough.at(-1)?.share ?? 1;
  return [...given].sort((a, b) => kept(a) - kept(b))[0] ?? promises[0];
}

interface KeptProps {
  readonly promise: PromiseShare;
  readonly again: PromiseShare | null;
  /** Futures behind each of the two. */
  readonly counts: readonly [number, number];
}

function Kept({ promise, again, counts }: KeptProps): ReactNode {
  const bands = [
    band(words.asItIs(counts[0]), 'hatched', promise),
    ...(again === null ? [] : [band(words.mended(counts[1]), 'edged', again)]),
  ];
  const columns: readonly Column[] = [
    { head: words.through, kind: 'head' },
    ...bands.map(({ name }) => ({ head: name, kind: 'text' }) as const),
  ];
  return (
    <>
      <p>
        {promise.planBreaks === null
          ? words.planKeeps
          : words.planBreaks(words.fiscal(promise.planBreaks))}
      </p>
      <BandFigure
        title={words.keptTitle(promise.name)}
        description={words.keptDescription}
        axis="%"
        top={100}
        periods={promise.keptThrough.map(({ year }) => {
          const label = words.fiscal(year);
          return { label, year: label };
        })}
        bands={bands}
      />
      <details>
        <summary>{words.keptTable}</summary>
        <DataTable
          caption={words.keptCaption(promise.name)}
          columns={columns}
          rows={promise.keptThrough.map((kept, place) => {
            const mended = again?.keptThrough[place];
            const cells = [
              words.fiscal(kept.year),
              shareWithError(kept),
              ...(mended === undefined ? [] : [shareWithError(mended)]),
            ];
            return { key: String(kept.year), cells };
          })}
        />
      </details>
    </>
  );
}

function band(name: string, look: Band['look'], { keptThrough }: PromiseShare): Band {
  return {
    ...{ name, look },
    ranges: keptThrough.map(({ share, low, high }) => ({
      low: 100 * low,
      middle: 100 * share,
      high: 100 * high,
    })),
  };
}
