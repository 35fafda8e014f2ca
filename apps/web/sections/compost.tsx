import { useId, useState, type ReactNode } from 'react';
import type { CompostRow, PlanOverview } from '#explain/overview/plan-overview.js';
import { WHOLE_YEAR } from '../charts/care-rows.js';
import { CompostFigure, compostSpec } from '../charts/compost-figure.js';
import { compostRows, compostSeasons } from '../charts/compost-rows.js';
import { Legend, stackKey } from '../charts/legend.js';
import { capitalized, wholeNumber } from '../format/numbers.js';
import { DataTable, type Column } from '../parts/data-table.js';
import { Section } from '../parts/section.js';
import { strings } from '../strings.data.js';
import { CompostByGrade } from './compost-by-grade.js';
import { SeasonPicker } from './season-picker.js';

const words = strings.compost;

const parts = ['made', 'bought', 'builds', 'topDress', 'givenAway', 'stock'] as const;

const columns: readonly Column[] = [
  { head: words.period, kind: 'head' },
  ...parts.map((part) => ({ head: words[part], kind: 'number' }) as const),
];

/** Compost made, bought, used and kept, by year or by one season of every year. */
export function Compost({ overview }: { readonly overview: PlanOverview }): ReactNode {
  const [choice, setChoice] = useState(WHOLE_YEAR);
  const id = useId();
  const rows = compostRows(overview, choice);
  const period = choice === WHOLE_YEAR ? strings.care.wholeYear : capitalized(choice);
  if (rows.length === 0) {
    return (
      <Section id="compost" heading={strings.sections.compost}>
        <p>{words.none}</p>
      </Section>
    );
  }
  return (
    <Section id="compost" heading={strings.sections.compost}>
      <SeasonPicker
        choices={[...compostSeasons(overview), WHOLE_YEAR]}
        choice={choice}
        onChoose={setChoice}
      />
      <p>{firstBought(overview.compost)}</p>
      <figure>
        <CompostFigure period={period} rows={rows} />
        <figcaption>
          <Legend id={id} items={stackKey(compostSpec(rows), id)} />
        </figcaption>
      </figure>
      <details>
        <summary>
          {words.tableSummary(choice === WHOLE_YEAR ? strings.care.theWholeYear : choice)}
        </summary>
        <DataTable
          caption={words.caption(period)}
          columns={columns}
          rows={rows.map((row) => ({
            key: row.label,
            cells: [row.label, ...parts.map((part) => wholeNumber(row[part]))],
          }))}
        />
      </details>
      <CompostByGrade rows={overview.compost} />
    </Section>
  );
}

function firstBought(rows: readonly CompostRow[]): string {
  const first = rows.find(({ bought }) => bought > 0);
  const total = rows.reduce((sum, { bought }) => sum + bought, 0);
  return first === undefined
    ? words.neverBought
    : words.firstBought(first.label, wholeNumber(total));
}
