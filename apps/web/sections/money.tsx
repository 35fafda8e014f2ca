import type { ReactNode } from 'react';
import type { FundRow, LapseRow, MoneyRow, PlanOverview } from '#explain/overview/plan-overview.js';
import { groupBy } from '../format/group-by.js';
import { dollars } from '../format/numbers.js';
import { DataTable, type Column } from '../parts/data-table.js';
import { Section } from '../parts/section.js';
import { strings } from '../strings.data.js';
import { CompostTable } from './compost-table.js';

const words = strings.money;

const yearColumn: Column = { head: words.year, kind: 'head' };

const moneyParts: readonly (readonly [keyof Omit<MoneyRow, 'year'>, string])[] = [
  ['build', words.build],
  ['care', words.care],
  ['positions', words.positions],
  ['compost', words.compost],
  ['standing', words.standing],
  ['received', words.received],
  ['lapsed', words.lapsed],
  ['closing', words.closing],
];

const fundParts: readonly (readonly [keyof Omit<FundRow, 'fund' | 'name' | 'year'>, string])[] = [
  ['opening', words.opening],
  ['received', words.received],
  ['spent', words.spent],
  ['lapsed', words.lapsed],
  ['closing', words.closing],
];

/** Dollars by year, each fund's ledger and the compost balance, folded away until wanted. */
export function Money({ overview }: { readonly overview: PlanOverview }): ReactNode {
  const { money, funds, compost, lapses } = overview;
  const isEmpty = money.length + funds.length + compost.length === 0;
  return (
    <Section id="money" heading={strings.sections.money}>
      {isEmpty && <p>{words.none}</p>}
      {lapses.length > 0 && <Lapses rows={lapses} />}
      {money.length > 0 && <MoneyTable rows={money} />}
      {[...groupBy(funds, ({ fund }) => fund)].map(([fund, rows]) => (
        <FundTable key={fund} name={rows[0]?.name ?? fund} rows={rows} />
      ))}
      {compost.length > 0 && <CompostTable rows={compost} />}
    </Section>
  );
}

function Lapses({ rows }: { readonly rows: readonly LapseRow[] }): ReactNode {
  return (
    <>
      <h3>{words.lapses}</h3>
      <ul className="lapses">
        {rows.map((row) => (
          <li key={`${row.fund} ${row.year}`}>{row.sentence}</li>
        ))}
      </ul>
    </>
  );
}

function MoneyTable({ rows }: { readonly rows: readonly MoneyRow[] }): ReactNode {
  return (
    <details>
      <summary>{words.yearsSummary}</summary>
      <DataTable
        caption={words.yearsCaption}
        columns={[yearColumn, ...moneyParts.map(([, head]) => ({ head, kind: 'number' }) as const)]}
        rows={rows.map((row) => ({
          key: row.year,
          cells: [row.year, ...moneyParts.map(([part]) => dollars(row[part]))],
        }))}
      />
    </details>
  );
}

interface FundTableProps {
  readonly name: string;
  readonly rows: readonly FundRow[];
}

function FundTable({ name, rows }: FundTableProps): ReactNode {
  return (
    <details>
      <summary>{words.fundSummary(name)}</summary>
      <DataTable
        caption={words.fundCaption(name)}
        columns={[yearColumn, ...fundParts.map(([, head]) => ({ head, kind: 'number' }) as const)]}
        rows={rows.map((row) => ({
          key: row.year,
          cells: [row.year, ...fundParts.map(([part]) => dollars(row[part]))],
        }))}
      />
    </details>
  );
}
