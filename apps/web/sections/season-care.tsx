import { useId, useState, type ReactNode } from 'react';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { CareFigure, careSpec } from '../charts/care-figure.js';
import { careRows, shortIn, seasonNames, WHOLE_YEAR, type CareRow } from '../charts/care-rows.js';
import { Legend, stackKey } from '../charts/legend.js';
import { capitalized, wholeNumber } from '../format/numbers.js';
import { DataTable, type Column, type TableRow } from '../parts/data-table.js';
import { Section } from '../parts/section.js';
import { strings } from '../strings.data.js';
import { SeasonPicker } from './season-picker.js';

const words = strings.care;

const columns: readonly Column[] = [
  { head: words.period, kind: 'head' },
  { head: words.careOf(words.ages.year1), kind: 'number' },
  { head: words.careOf(words.ages.year2), kind: 'number' },
  { head: words.careOf(words.ages.year3), kind: 'number' },
  { head: words.careOf(words.ages.mature), kind: 'number' },
  { head: words.building, kind: 'number' },
  { head: words.supplyNow, kind: 'number' },
  { head: words.supplyProposed, kind: 'number' },
  { head: words.shortNow, kind: 'number' },
  { head: words.unserved, kind: 'number' },
];

/** Hours of care of one season over all years, summer first. */
export function SeasonCare({ overview }: { readonly overview: PlanOverview }): ReactNode {
  const names = seasonNames(overview);
  const [choice, setChoice] = useState(names[0] ?? WHOLE_YEAR);
  const id = useId();
  const rows = careRows(overview, choice);
  const name = choice === WHOLE_YEAR ? words.wholeYear : capitalized(choice);
  if (names.length === 0) {
    return (
      <Section id="care" heading={strings.sections.care}>
        <p>{words.none}</p>
      </Section>
    );
  }
  return (
    <Section id="care" heading={strings.sections.care}>
      <SeasonPicker choices={[...names, WHOLE_YEAR]} choice={choice} onChoose={setChoice} />
      <p className="care-caption" aria-live="polite">
        {captionOf(overview, choice)}
      </p>
      <figure>
        <CareFigure name={name} rows={rows} shortIn={shortIn(overview, choice)?.label ?? null} />
        <figcaption>
          <Legend id={id} items={stackKey(careSpec, id)} />
        </figcaption>
      </figure>
      <p className="quiet">{words.basis}</p>
      <details>
        <summary>{words.tableSummary(choice === WHOLE_YEAR ? words.theWholeYear : choice)}</summary>
        <DataTable caption={words.caption(name)} columns={columns} rows={rows.map(tableRow)} />
      </details>
    </Section>
  );
}

function captionOf(overview: PlanOverview, choice: string): string {
  const short = shortIn(overview, choice);
  if (choice !== WHOLE_YEAR) return words.seasonShort(choice, short?.label ?? null);
  const main = seasonNames(overview)[0] ?? WHOLE_YEAR;
  const mainShort = shortIn(overview, main);
  const hides = mainShort !== null && isBefore(overview, mainShort.year, short?.year ?? null);
  return [
    hides ? words.yearHides(main) : words.yearCanHide,
    words.yearShort(short?.label ?? null),
    words.seasonShort(main, mainShort?.label ?? null),
  ].join(' ');
}

function isBefore({ years }: PlanOverview, year: string, other: string | null): boolean {
  const at = (name: string): number => years.findIndex((row) => row.year === name);
  return other === null || at(year) < at(other);
}

function tableRow(row: CareRow): TableRow {
  const hours = [row.year1, row.year2, row.year3, row.mature, row.building];
  const supply = [row.supplyNow, row.supplyProposed, row.shortNow, row.unserved];
  return {
    key: row.label,
    cells: [
      row.afterHorizon ? words.afterHorizonRow(row.label) : row.label,
      ...[...hours, ...supply].map(wholeNumber),
    ],
  };
}
