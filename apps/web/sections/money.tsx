import type { ReactNode } from 'react';
import type { FundRow, MoneyRow, PlanOverview } from '#explain/overview/plan-overview.js';
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

type FundPart = readonly [keyof Omit<FundRow, 'fund' | 'name' | 'year'>, string];
const paidBack: FundPart = ['paidBack', words.paidBack];
const fundParts: readonly FundPart[] = [
  ['opening', words.opening],
  ['received', words.received],
  paidBack,
  ['spent', words.spent],
  ['lapsed', words.lapsed],
  ['closing', words.closing],
];

/** Dollars by year, each fund's ledger and the compost balance, folded away until wanted. */
export function Money({ overview }: { readonly overview: PlanOverview }): ReactNode {
  const { money, funds, compost, lapses, paybacks } = overview;
  const isEmpty = money.length + funds.length + compost.length === 0;
  return (
    <Section id="money" heading={strings.sections.money}>
      {isEmpty && <p>{words.none}</p>}
      <Sentences heading={words.lapses} rows={lapses} />
      <Sentences heading={words.paybacks} rows={paybacks} />
      {money.length > 0 && <MoneyTable rows={money} />}
      {[...groupBy(funds, ({ fund }) => fund)].map(([fund, rows]) => (
        <FundTable key={fund} name={rows[0]?.name ?? fund} rows={rows} />
      ))}
      {compost.length > 0 && <CompostTable rows={compost} />}
    </Section>
  );
}

interface SentencesProps {
  readonly heading: string;
  readonly rows: readonly { readonly sentence: string }[];
}

function Sentences({ heading, rows }: SentencesProps): ReactNode {
  if (rows.length === 0) return null;
  return (
    <>
      <h3>{heading}</h3>
      <ul className="lapses">
        {rows.map(({ sentence }) => (
          <li key={sentence}>{sentence}</li>
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
  const isPaidBack = rows.some((row) => row.paidBack !== 0);
  const parts = fundParts.filter((part) => part !== paidBack || isPaidBack);
  return (
    <details>
      <summary>{words.fundSummary(name)}</summary>
      <DataTable
        caption={words.fundCaption(name)}
        columns={[yearColumn, ...parts.map(([, head]) => ({ head, kind: 'number' }) as const)]}
        rows={rows.map((row) => ({
          key: row.year,
          cells: [row.year, ...parts.map(([part]) => dollars(row[part]))],
        }))}
      />
    </details>
  );
}
