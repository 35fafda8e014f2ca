import { useId, type ReactNode } from 'react';
import type { MoneyRow, PlanOverview } from '#explain/overview/plan-overview.js';
import { FundFigure, fundSpec } from '../charts/fund-figure.js';
import { allFunds, ledgersOf, type LedgerRow } from '../charts/fund-rows.js';
import { Legend, stackKey } from '../charts/legend.js';
import { dollars } from '../format/numbers.js';
import { DataTable, type Column } from '../parts/data-table.js';
import { Section } from '../parts/section.js';
import { strings } from '../strings.data.js';

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

const ledgerParts = [
  'opening',
  'received',
  'paidBack',
  'spent',
  'lapsed',
  'closing',
  'floor',
] as const;
/** Left out of a table in which they are nothing in every year. */
const rareParts: ReadonlySet<string> = new Set(['paidBack', 'floor']);

/** What all funds together take in, spend and keep, and each fund's ledger, folded away. */
export function Money({ overview }: { readonly overview: PlanOverview }): ReactNode {
  const { money, funds, lapses, paybacks } = overview;
  return (
    <Section id="money" heading={strings.sections.money}>
      {money.length + funds.length === 0 && <p>{words.none}</p>}
      <Sentences heading={words.lapses} rows={lapses} />
      <Sentences heading={words.paybacks} rows={paybacks} />
      {funds.length > 0 && <LedgerFigure name={words.all} rows={allFunds(overview)} />}
      {money.length > 0 && <MoneyTable rows={money} />}
      {ledgersOf(funds).map(({ id, name, rows }) => (
        <details key={id}>
          <summary>{words.fundSummary(name)}</summary>
          <LedgerFigure name={name} rows={rows} />
        </details>
      ))}
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

interface LedgerProps {
  readonly name: string;
  readonly rows: readonly LedgerRow[];
}

function LedgerFigure({ name, rows }: LedgerProps): ReactNode {
  const id = useId();
  const spec = fundSpec(rows);
  return (
    <>
      <p>{sumsInWords(rows)}</p>
      <figure>
        <FundFigure name={name} rows={rows} />
        <figcaption>
          <Legend id={id} items={stackKey(spec, id)} />
        </figcaption>
      </figure>
      <details>
        <summary>{words.tableSummary(name)}</summary>
        <LedgerTable name={name} rows={rows} />
      </details>
    </>
  );
}

function LedgerTable({ name, rows }: LedgerProps): ReactNode {
  const parts = ledgerParts.filter(
    (part) => !rareParts.has(part) || rows.some((row) => row[part] !== 0),
  );
  return (
    <DataTable
      caption={words.fundCaption(name)}
      columns={[
        yearColumn,
        ...parts.map(
          (part) =>
            ({ head: part === 'floor' ? words.floorHead : words[part], kind: 'number' }) as const,
        ),
      ]}
      rows={rows.map((row) => ({
        key: row.year,
        cells: [row.year, ...parts.map((part) => dollars(row[part]))],
      }))}
    />
  );
}

function sumsInWords(rows: readonly LedgerRow[]): string {
  const sum = (of: (row: LedgerRow) => number): number =>
    rows.reduce((total, row) => total + of(row), 0);
  const lapsed = sum((row) => row.lapsed);
  return words.fundSums(
    dollars(sum((row) => row.received)),
    dollars(sum((row) => row.spent)),
    lapsed > 0 ? dollars(lapsed) : null,
  );
}
