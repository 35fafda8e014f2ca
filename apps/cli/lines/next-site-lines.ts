import type {
  ChoiceRow,
  CouldBecome,
  NextSiteAnswer,
} from '#explain/questions/next-site/answer.js';
import { madeLines } from './made-lines.js';
import { dollars, hours } from './amounts.js';

/** Reasons that are printed for each choice; `--json` has them all. */
const MOST_REASONS = 4;

/** The answer as a committee reads it: the recommendation, then the first choices with their numbers. */
export function nextSiteLines(top: number): (answer: NextSiteAnswer) => string[] {
  return (answer) => answerLines(answer, top);
}

function answerLines(answer: NextSiteAnswer, top: number): string[] {
  const { headline, choices, couldBecome, made } = answer;
  const left = choices.slice(top);
  return [
    headline,
    '',
    ...choices.slice(0, top).flatMap((c) => choiceLines(c)),
    ...(left.length > 0
      ? [
          `  And ${left.length} more: ${left.map((c) => c.id).join(', ')} (--top ${choices.length} shows all).`,
        ]
      : []),
    ...couldBecomeLines(couldBecome),
    '',
    ...madeLines(made),
  ];
}

function choiceLines(c: ChoiceRow): string[] {
  const type = c.buildTypes.length > 0 ? `, as ${c.buildTypes.join(' and ').toLowerCase()}` : '';
  return [
    `${c.name}${type}`,
    `    ${c.sentence}`,
    ...(c.standing === 'impossible' || c.standing === 'not-found' ? [] : [`    ${factsLine(c)}`]),
    ...c.giftsUsed.map((g) => `    uses ${dollars(g.dollars)} of “${g.name}”`),
    ...c.giftsLost.map((g) => `    lets ${dollars(g.dollars)} of “${g.name}” lapse`),
    ...c.reasons.slice(0, MOST_REASONS).map((r) => `    for: ${r.sentence}  [${r.source}]`),
    ...c.against.slice(0, MOST_REASONS).map((r) => `    against: ${r.sentence}  [${r.source}]`),
    ...c.openGates.map((g) => `    open: ${g.what} ${g.clearedBy}.`),
    '',
  ];
}

function factsLine(c: ChoiceRow): string {
  const cost = c.cost
    ? `${dollars(c.cost.low)} to ${dollars(c.cost.high)} (likely ${dollars(c.cost.likely)}, ${c.cost.dollarsOf} dollars); `
    : '';
  const care =
    c.sites.length > 0
      ? `at most ${hours(c.busySeasonHours)} of care in a ${c.busySeason} of its first ten years; `
      : '';
  const limit = c.firstLimit
    ? `first limit: ${c.firstLimit.resource}, ${c.firstLimit.label}${moves(c)}`
    : 'nothing runs short';
  return `${cost}${care}${limit}`;
}

function moves({ firstLimitMovesYears: years }: ChoiceRow): string {
  if (!years) return '';
  const size = Math.abs(years);
  return ` (${size} ${size === 1 ? 'year' : 'years'} ${years > 0 ? 'later' : 'earlier'})`;
}

function couldBecomeLines(rows: readonly CouldBecome[]): string[] {
  if (rows.length === 0) return [];
  return [
    '',
    'Not eligible next year before something is found out:',
    ...rows.flatMap((row) => [
      `  ${row.name}`,
      ...row.findOut.map((g) => `    ${g.what} ${g.clearedBy}.`),
      ...(row.ifPassed ? [`    ${row.ifPassed.sentence}`] : []),
    ]),
  ];
}
