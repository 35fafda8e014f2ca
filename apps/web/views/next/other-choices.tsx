import type { ReactNode } from 'react';
import type { ChoiceRow, NextSiteAnswer } from '#explain/questions/next-site/answer.js';
import { wholeNumber } from '../../format/numbers.js';
import { DataTable, type Column } from '../../parts/data-table.js';
import { QuestionSection } from '../../parts/question-section.js';
import { strings } from '../../strings.data.js';

const words = strings.others;

/** What else could be chosen for next year: near ties, what speaks against each, and tests that would matter. */
export function OtherChoices({ planId }: { readonly planId: string }): ReactNode {
  return (
    <QuestionSection<NextSiteAnswer>
      id="others"
      heading={strings.sections.others}
      lead={words.lead}
      asking={{ planId, question: { kind: 'next-site' } }}
      show={(answer) => <Choices answer={answer} />}
    />
  );
}

const columns: readonly Column[] = [
  { head: words.choice, kind: 'name' },
  { head: words.standing, kind: 'text' },
  { head: words.what, kind: 'words' },
  { head: words.hours, kind: 'number' },
  { head: words.against, kind: 'words' },
];

const couldColumns: readonly Column[] = [
  { head: words.site, kind: 'name' },
  { head: words.findOut, kind: 'words' },
  { head: words.ifPassed, kind: 'words' },
];

function Choices({ answer }: { readonly answer: NextSiteAnswer }): ReactNode {
  return (
    <>
      <DataTable caption={words.caption} columns={columns} rows={answer.choices.map(choiceRow)} />
      {answer.couldBecome.length > 0 && (
        <>
          <h3>{words.could}</h3>
          <DataTable
            caption={words.couldCaption}
            columns={couldColumns}
            rows={answer.couldBecome.map(({ site, name, findOut, ifPassed }) => ({
              key: site,
              cells: [
                name,
                findOut.map(({ what }) => what).join(' '),
                ifPassed?.sentence ?? words.notWorkedOut,
              ],
            }))}
          />
        </>
      )}
    </>
  );
}

/** Hours are those of a plan; where none was found there are none to tell. */
function hasPlan({ standing }: ChoiceRow): boolean {
  return standing !== 'not-found' && standing !== 'impossible';
}

function choiceRow(choice: ChoiceRow) {
  const against = choice.against.map(({ sentence }) => sentence).join(' ');
  return {
    key: choice.id,
    cells: [
      choice.name,
      words.standings[choice.standing],
      choice.sentence,
      hasPlan(choice) ? wholeNumber(choice.busySeasonHours) : words.notKnown,
      against === '' ? words.none : against,
    ],
  };
}
