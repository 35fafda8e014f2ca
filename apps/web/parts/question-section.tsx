import type { ReactNode } from 'react';
import type { Made } from '#explain/questions/common/asked.js';
import type { Explanation } from '../api.js';
import { withoutCapital } from '../format/without-capital.js';
import { useQuestion, type Asking } from '../state/use-question.js';
import { strings } from '../strings.data.js';
import { FailureNote } from './failure-note.js';
import { Section } from './section.js';

const words = strings.question;

/** What every answer has; one that was found by planning again also says how. */
export interface Answer {
  readonly headline: string;
  readonly made?: Made;
  /** What an answer from samples left out, sentence by sentence. */
  readonly leftOut?: readonly string[];
}

/** Time for what the usual time was too short for. */
const LONGER_SECONDS = 120;

interface QuestionSectionProps<Given extends Answer> {
  readonly id: string;
  readonly heading: string;
  readonly lead: string;
  readonly asking: Asking;
  readonly show: (answer: Given) => ReactNode;
}

/** A question that is worked out on demand, with how the answer was found. */
export function QuestionSection<Given extends Answer>(
  props: QuestionSectionProps<Given>,
): ReactNode {
  const { id, heading, lead, asking, show } = props;
  const { asked, failure, ask } = useQuestion(asking);
  const isOpen = asked?.state === 'queued' || asked?.state === 'working';
  const answer = (asked?.answer ?? null) as unknown as Given | null;
  return (
    <Section id={id} heading={heading}>
      <p>{lead}</p>
      <div role="status">
        {isOpen && <p>{progressInWords(asked)}</p>}
        {asked?.problem && (
          <p>
            <strong>{words.failed}</strong> {asked.problem.problem} {asked.problem.remedy}
          </p>
        )}
        {failure !== null && <FailureNote failure={failure} />}
        {answer !== null && (
          <p>
            <strong>{answer.headline}</strong>
          </p>
        )}
      </div>
      {isOpen && (
        <progress aria-label={words.progress} max={1} value={asked.progress?.share ?? 0} />
      )}
      {answer !== null && (
        <>
          {show(answer)}
          {answer.made !== undefined && (
            <p className="quiet">
              {answer.made.sentence}{' '}
              {answer.made.skipped.length > 0 && words.skipped(answer.made.skipped.join('; '))}
            </p>
          )}
        </>
      )}
      {!isOpen && (
        <div className="form-buttons">
          <button type="button" onClick={() => ask()}>
            {asked === null ? words.ask : words.again}
          </button>
          {answer !== null && isCutShort(answer) && (
            <button type="button" onClick={() => ask(LONGER_SECONDS)}>
              {words.longer}
            </button>
          )}
        </div>
      )}
    </Section>
  );
}

function isCutShort({ made, leftOut }: Answer): boolean {
  return (made?.skipped.length ?? 0) > 0 || (leftOut?.length ?? 0) > 0;
}

function progressInWords({ progress }: Explanation): string {
  return progress === null ? words.asking : words.working(withoutCapital(progress.message));
}
