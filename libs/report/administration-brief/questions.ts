import type { AdditionsAnswer } from '#explain/questions/additions/additions.js';
import type { LimitsAnswer } from '#explain/questions/limits/answer.js';
import type { NextSiteAnswer } from '#explain/questions/next-site/answer.js';
import type { PromisesAnswer } from '#explain/questions/promises/answer.js';
import type { FuturesAnswer } from '#futures/results/answer.js';
import { dayInWords } from '#units/dates-in-words.js';
import { capitalized, listInWords, wholeInWords } from '#units/in-words.js';
import { ofFutures } from '#units/sampled-in-words.js';
import { bold } from '../document/inline.js';
import type { Block } from '../document/plan-document.js';
import { row, table, textColumn, type Row } from '../document/table.js';
import { heading, pageBreak } from '../document/text-blocks.js';
import { errorInWords } from '../parts/futures.js';
import type { PlanAnswers } from '../parts/plan-answers.js';

/** Lines of one answer below its first, so that all questions stand on a page. */
const MOST_LINES = 3;

/** A page of what the committee asked of this plan, each answer with how sure it is; nothing without answers. */
export function questionBlocks(answers: PlanAnswers, dataDate: string): readonly Block[] {
  const { nextSite, limits, additions, promises, futures } = answers;
  const rows: Row[] = [
    ...(nextSite ? nextSiteRows(nextSite) : []),
    ...(limits ? limitRows(limits) : []),
    ...(additions ? additionRows(additions) : []),
    ...(promises ? promiseRows(promises) : []),
    ...(futures ? futureRows(futures) : []),
  ];
  if (rows.length === 0) return [];
  return [
    pageBreak(),
    heading(1, 'Questions the committee asked'),
    table({
      caption: `Asked of this plan, on campus data of ${dayInWords(dataDate)}`,
      density: 'compact',
      columns: [textColumn('Asked', 2), textColumn('Answer', 6.5), textColumn('How sure', 3.5)],
      rows,
      note: 'Each answer was found by planning again with the one thing changed and comparing whole plans, or by sampling. A limit of time means that a better plan may exist.',
    }),
  ];
}

/** The question with its answer, then what else it says. */
function rowsOf(question: string, answer: Sure, more: readonly (Sure & { of: string })[]): Row[] {
  return [
    row([bold(question)], answer.text, answer.sure),
    ...more.slice(0, MOST_LINES).map(({ of, text, sure }) => row(of, text, sure)),
  ];
}

/** What is said, and how sure it is. */
interface Sure {
  readonly text: string;
  readonly sure: string;
}

function nextSiteRows({ headline, year, choices, couldBecome, gap, made }: NextSiteAnswer): Row[] {
  const near = choices.filter(({ standing }) => standing === 'tied');
  const worse = choices.filter(({ standing }) => ['worse', 'found-worse'].includes(standing));
  const [first] = worse;
  const [open] = couldBecome;
  const gapWords =
    gap === null ? 'No bound is known.' : `Told apart no finer than a gap of ${percent(gap)}.`;
  return rowsOf(
    `Which site in ${year}, and why not another?`,
    { text: headline, sure: `${gapWords} ${made.sentence}` },
    [
      ...(near.length > 0
        ? [
            {
              of: 'Near ties',
              text: `${listInWords(near.slice(0, MOST_NAMED).map(({ name }) => name))}${rest(near.length)}: cannot be told apart from it.`,
              sure: 'Choose by what differs in fact, not by decimals.',
            },
          ]
        : []),
      ...(first
        ? [
            {
              of: 'The next behind',
              text: `${first.name}. ${first.sentence}`,
              sure: SURE[first.standing] ?? '',
            },
          ]
        : []),
      ...(open
        ? [
            {
              of: 'Could become one',
              text: `${open.name}: ${open.findOut.map(({ what }) => what).join(' ')}`,
              sure: 'Not known; not taken as passed.',
            },
          ]
        : []),
    ],
  );
}

/** Near ties that are named; more are counted. */
const MOST_NAMED = 4;

function rest(count: number): string {
  return count > MOST_NAMED ? `, and ${wholeInWords(count - MOST_NAMED)} more` : '';
}

const SURE: Partial<Record<NextSiteAnswer['choices'][number]['standing'], string>> = {
  worse: 'Proven.',
  'found-worse': 'Found with every seed, not proven.',
};

function percent(share: number): string {
  return `${(share * 100).toLocaleString('en-US', { maximumSignificantDigits: 2 })}%`;
}

function limitRows({ headline, ofPromise, made }: LimitsAnswer): Row[] {
  return rowsOf(
    'What breaks first?',
    { text: headline, sure: made.sentence },
    ofPromise.filter(isWorkedOut).map((limit) => ({
      of: limit.name,
      text: limit.sentence,
      sure:
        limit.impossibleThrough === null
          ? 'Found; longer may be possible.'
          : 'Between what was found and what is proven.',
    })),
  );
}

function isWorkedOut({
  keptThrough,
  impossibleThrough,
}: LimitsAnswer['ofPromise'][number]): boolean {
  return keptThrough !== null || impossibleThrough !== null;
}

function additionRows({ headline, additions, made }: AdditionsAnswer): Row[] {
  const bought = additions.filter(({ changes }) => changes.length > 0);
  return rowsOf(
    'What would more buy?',
    { text: headline, sure: made.sentence },
    bought.map(({ name, sentence }) => ({
      of: capitalized(name),
      text: sentence,
      sure: 'Found, not proven.',
    })),
  );
}

function promiseRows({
  headline,
  promises,
  lastKept,
  lastKeptSentence,
  made,
}: PromisesAnswer): Row[] {
  return rowsOf('What does each promise cost?', { text: headline, sure: made.sentence }, [
    ...(lastKept === null
      ? []
      : [
          {
            of: 'The yearly promise',
            text: lastKeptSentence,
            sure: 'Found; longer may be possible.',
          },
        ]),
    ...promises
      .filter(({ changes }) => changes.length > 0)
      .map(({ name, sentence }) => ({ of: name, text: sentence, sure: 'Found, not proven.' })),
  ]);
}

function futureRows({ headline, fixed, mended, paired }: FuturesAnswer): Row[] {
  const { p10, p50, p90 } = fixed.builtSites;
  const gained = paired?.promises.filter(({ longer }) => longer.share > 0) ?? [];
  return rowsOf(
    'How does it fare if things go otherwise?',
    {
      text: headline,
      sure: `${wholeInWords(fixed.futures)} sampled futures; shares are ${errorInWords(fixed)}.`,
    },
    [
      {
        of: 'Sites built',
        text: `${wholeInWords(p50.value)} in the middle future; ${wholeInWords(p10.value)} or fewer in one of ten, ${wholeInWords(p90.value)} or more in one of ten.`,
        sure: 'The plan kept as it is.',
      },
      ...(mended && gained.length > 0
        ? [
            {
              of: 'Made anew each year',
              text: `${gained.map(({ name, longer }) => `“${name}” is kept longer in ${ofFutures(longer)}`).join('; ')}.`,
              sure: `${wholeInWords(mended.futures)} of the same futures, by a repair of limited work; shares are ${errorInWords(mended)}.`,
            },
          ]
        : []),
    ],
  );
}
