import type { ReactNode } from 'react';
import type { ConflictsAnswer, RepairRow } from '#explain/questions/conflicts/answer.js';
import type { Solve } from '../api.js';
import { changeInWords } from '../format/file-changes.js';
import { wholeNumber } from '../format/numbers.js';
import { DataTable, type Column } from '../parts/data-table.js';
import { QuestionSection } from '../parts/question-section.js';
import { strings } from '../strings.data.js';

const words = strings.conflicts;

interface ConflictQuestionProps {
  readonly id: string;
  /** The solve that has proven that there is no plan. */
  readonly solve: Pick<Solve, 'campusId' | 'campusVersion'>;
}

/** What of a campus cannot all be kept, set by set, and what each repair costs. */
export function ConflictQuestion({ id, solve }: ConflictQuestionProps): ReactNode {
  const { campusId, campusVersion: fromVersion } = solve;
  return (
    <QuestionSection<ConflictsAnswer>
      id={id}
      heading={words.heading}
      lead={words.lead}
      asking={{ campusId, fromVersion, question: { kind: 'conflicts' } }}
      show={(answer) => <Conflicts answer={answer} />}
    />
  );
}

const setColumns: readonly Column[] = [
  { head: words.set, kind: 'head' },
  { head: words.against, kind: 'words' },
];

const repairColumns: readonly Column[] = [
  { head: words.repair, kind: 'head' },
  { head: words.asks, kind: 'words' },
  { head: words.sites, kind: 'number' },
  { head: words.change, kind: 'words' },
];

function Conflicts({ answer: { sets, repairs } }: { readonly answer: ConflictsAnswer }): ReactNode {
  return (
    <>
      {sets.length > 0 && (
        <DataTable
          caption={words.setsCaption}
          columns={setColumns}
          rows={sets.map(({ members, sentence }, i) => ({
            key: members.map(({ id }) => id).join(' '),
            cells: [wholeNumber(i + 1), sentence],
          }))}
        />
      )}
      {repairs.length > 0 && (
        <DataTable
          caption={words.repairsCaption}
          columns={repairColumns}
          rows={repairs.map(repairRow)}
        />
      )}
    </>
  );
}

function repairRow({ lets, sentence, plan, changes }: RepairRow, i: number) {
  const sites = plan === null ? words.notWorkedOut : wholeNumber(plan.sitesBuilt);
  const toDo = (changes ?? []).map((change) => changeInWords(change, lets));
  const change = toDo.length === 0 ? words.notWorkedOut : toDo.join(' ');
  const cells = [wholeNumber(i + 1), sentence, sites, change];
  return { key: lets.map(({ id }) => id).join(' '), cells };
}
