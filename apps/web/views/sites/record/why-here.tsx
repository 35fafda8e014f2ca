import type { ReactNode } from 'react';
import type { WhyAnswer } from '#explain/questions/why/why.js';
import { capitalized } from '../../../format/numbers.js';
import { DataTable, type Column } from '../../../parts/data-table.js';
import { QuestionSection } from '../../../parts/question-section.js';
import { strings } from '../../../strings.data.js';

const words = strings.why;

const columns: readonly Column[] = [
  { head: words.place, kind: 'name' },
  { head: words.what, kind: 'words' },
];

interface WhyHereProps {
  readonly planId: string;
  readonly site: string;
}

/** Why a site stands where it does in the plan. */
export function WhyHere({ planId, site }: WhyHereProps): ReactNode {
  return (
    <QuestionSection<WhyAnswer>
      id="why"
      heading={words.heading}
      lead={words.lead}
      asking={{ planId, question: { kind: 'why', site } }}
      show={({ places }) => (
        <DataTable
          caption={words.caption}
          columns={columns}
          rows={places.map(({ name, sentence }) => ({
            key: name,
            cells: [capitalized(name), sentence],
          }))}
        />
      )}
    />
  );
}
