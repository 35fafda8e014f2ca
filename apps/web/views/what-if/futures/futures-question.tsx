import type { ReactNode } from 'react';
import type { FuturesAnswer } from '#futures/results/answer.js';
import { wholeNumber } from '../../../format/numbers.js';
import { QuestionSection } from '../../../parts/question-section.js';
import { strings } from '../../../strings.data.js';
import { CareInFutures } from './care-in-futures.js';
import { FutureOdds } from './future-odds.js';
import { GiftsInFutures } from './gifts-in-futures.js';
import { PromisesInFutures } from './promises-in-futures.js';

const words = strings.futures;

/** As the api keeps it, so that an answer given before is found again. */
const question = { kind: 'futures', futures: 1000, seed: 1 } as const;

/** How the plan fares in sampled futures: care against people, promises, gifts. */
export function FuturesQuestion({ planId }: { readonly planId: string }): ReactNode {
  return (
    <QuestionSection<FuturesAnswer>
      id="futures"
      heading={words.heading}
      lead={words.lead}
      asking={{ planId, question }}
      show={(answer) => <Futures answer={answer} />}
    />
  );
}

function Futures({ answer }: { readonly answer: FuturesAnswer }): ReactNode {
  const { fixed, mended, held, leftOut } = answer;
  return (
    <>
      <p>{words.met(wholeNumber(fixed.futures), fixed.recourse)}</p>
      {mended !== null && <p>{words.metAgain(wholeNumber(mended.futures), mended.recourse)}</p>}
      <CareInFutures result={fixed} />
      <PromisesInFutures fixed={fixed} mended={mended} />
      {fixed.gifts.length > 0 && <GiftsInFutures result={fixed} />}
      <FutureOdds answer={answer} />
      <h3>{words.held}</h3>
      <ul className="reasons">
        {held.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {leftOut.length > 0 && <p className="quiet">{words.leftOut(leftOut.join(' '))}</p>}
    </>
  );
}
