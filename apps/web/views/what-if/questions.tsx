import type { ReactNode } from 'react';
import type { AdditionsAnswer } from '#explain/questions/additions/additions.js';
import type { LimitsAnswer, PromiseLimit } from '#explain/questions/limits/answer.js';
import type { PromisesAnswer } from '#explain/questions/promises/answer.js';
import { afterName } from '../../format/after-name.js';
import { capitalized, dollars } from '../../format/numbers.js';
import { DataTable, type Column } from '../../parts/data-table.js';
import { QuestionSection } from '../../parts/question-section.js';
import { strings } from '../../strings.data.js';

const words = strings.whatIfQuestions;

interface QuestionProps {
  readonly planId: string;
}

/** Promises with and without. */
export function PromiseQuestion({ planId }: QuestionProps): ReactNode {
  return (
    <QuestionSection<PromisesAnswer>
      id="promise-prices"
      heading={words.promises}
      lead={words.promisesLead}
      asking={{ planId, question: { kind: 'promises' } }}
      show={(answer) => <Promises answer={answer} />}
    />
  );
}

const promiseColumns: readonly Column[] = [
  { head: words.promise, kind: 'name' },
  { head: words.strength, kind: 'text' },
  { head: words.difference, kind: 'words' },
];

const skipColumns: readonly Column[] = [
  { head: words.years, kind: 'head' },
  { head: strings.changes.after, kind: 'words' },
];

function Promises({ answer }: { readonly answer: PromisesAnswer }): ReactNode {
  return (
    <>
      <DataTable
        caption={words.promisesCaption}
        columns={promiseColumns}
        rows={answer.promises.map(({ id, name, strength, sentence }) => ({
          key: id,
          cells: [name, strength, afterName(sentence, words.without(name))],
        }))}
      />
      <p>{answer.lastKeptSentence}</p>
      {answer.skipping.length > 0 && (
        <DataTable
          caption={words.skipCaption}
          columns={skipColumns}
          rows={answer.skipping.map(({ years, sentence }) => ({
            key: years.join(),
            cells: [years.join(', '), sentence],
          }))}
        />
      )}
      <p>{answer.notModelled}</p>
    </>
  );
}

/** How long the yearly promise can be kept. */
export function LimitQuestion({ planId }: QuestionProps): ReactNode {
  return (
    <QuestionSection<LimitsAnswer>
      id="promise-limits"
      heading={words.limits}
      lead={words.limitsLead}
      asking={{ planId, question: { kind: 'limits' } }}
      show={({ ofPromise, together }) => (
        <DataTable
          caption={words.limitsCaption}
          columns={limitColumns}
          rows={[...ofPromise, ...together].map(limitRow)}
        />
      )}
    />
  );
}

const limitColumns: readonly Column[] = [
  { head: words.resource, kind: 'name' },
  { head: words.kept, kind: 'text' },
  { head: words.impossible, kind: 'text' },
  { head: strings.limits.what, kind: 'words' },
];

function limitRow({ id, name, keptThrough, impossibleThrough, sentence }: PromiseLimit) {
  const cells = [
    capitalized(name),
    keptThrough ?? words.noneFound,
    impossibleThrough ?? words.notProven,
    afterName(sentence, name),
  ];
  return { key: id, cells };
}

/** What one more of each thing would buy. */
export function AdditionQuestion({ planId }: QuestionProps): ReactNode {
  return (
    <QuestionSection<AdditionsAnswer>
      id="additions"
      heading={words.additions}
      lead={words.additionsLead}
      asking={{ planId, question: { kind: 'additions' } }}
      show={({ additions }) => (
        <DataTable
          caption={words.additionsCaption}
          columns={additionColumns}
          rows={additions.map((row) => ({
            key: row.id,
            cells: [
              capitalized(row.name),
              row.dollars === null ? words.unknown : dollars(row.dollars),
              perYearInWords(row),
              `${afterName(row.sentence, row.name)} ${row.note}`,
            ],
          }))}
        />
      )}
    />
  );
}

/** What was not planned again is not known to buy nothing. */
function perYearInWords({ measures, changes, dollarsPerYear }: AddedRow): string {
  if (measures === null) return words.notWorkedOut;
  if (dollarsPerYear !== null) return dollars(dollarsPerYear);
  const years = changes.find(({ measure }) => measure === 'promiseYearsKept');
  return (years?.change ?? 0) > 0 ? words.noPrice : words.buysNone;
}

type AddedRow = AdditionsAnswer['additions'][number];

const additionColumns: readonly Column[] = [
  { head: words.addition, kind: 'name' },
  { head: words.cost, kind: 'number' },
  { head: words.perYear, kind: 'number' },
  { head: words.buys, kind: 'words' },
];
