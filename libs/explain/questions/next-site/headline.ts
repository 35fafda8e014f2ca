import type { Campus } from '#domain/campus.js';
import { counted, hoursInWords, listInWords, percentInWords } from '#units/in-words.js';
import type { Made } from '../common/asked.js';
import type { ChoiceRow, CouldBecome, NextSiteAnswer } from './answer.js';
import { DOLLAR_STEP, HOUR_STEP, isLess, lostDollars } from './order.js';
import { amountInWords } from './standing.js';

/** Most names in a sentence; more are counted. */
const MOST_NAMED = 3;

/** The answer in two or three sentences that a chair would read out. */
export function headlineOf(
  campus: Campus,
  {
    year,
    firstOpenYear,
    choices,
    couldBecome,
    made,
  }: Omit<NextSiteAnswer, 'question' | 'headline' | 'gap'>,
): string {
  const best = choices.find((c) => c.standing === 'recommended');
  const sites = choices.filter((c) => c.sites.length > 0);
  if (sites.length === 0)
    return `No candidate is eligible in ${year}.${firstOpen(firstOpenYear)}${tests(couldBecome)}`;
  if (!best) return `No plan was found for ${year}.${tests(couldBecome)}`;
  const recommended = best.sites.length === 0 ? 'build no site' : best.name;
  return `Recommended for ${year}: ${recommended}.${oneSearch(made, best)}${ties(choices)}${namedFirst(choices)}${nextBest(campus, choices)}${tests(couldBecome)}`;
}

/** One search of each tells little, so that it is said before any difference is. */
function oneSearch({ rounds }: Made, { seedsRun }: ChoiceRow): string {
  if (rounds === null || seedsRun > 1) return '';
  return ' There was time for one search of each only, so that more time may well say otherwise.';
}

function firstOpen(year: string | null): string {
  return year === null
    ? ' As the file stands, none is in any later year either.'
    : ` The first year in which one may be prepared is ${year}.`;
}

function ties(choices: readonly ChoiceRow[]): string {
  const tied = choices.filter((c) => c.standing === 'tied');
  if (tied.length === 0) return '';
  const names = tied.map((c) => (c.sites.length === 0 ? 'building none' : c.name));
  const who =
    names.length > MOST_NAMED ? counted(names.length, 'other choice') : listInWords(names);
  const most = Math.max(...tied.map((c) => c.regret?.shares?.most ?? Infinity));
  const range = Number.isFinite(most)
    ? ` (a difference of at most ${percentInWords(most)} of benefit)`
    : '';
  return ` ${who} cannot be told apart from it${range}.`;
}

/** Why the recommended one stands first of those that cannot be told apart. */
function namedFirst(choices: readonly ChoiceRow[]): string {
  const [first, next] = choices.filter(
    (c) => c.standing === 'recommended' || c.standing === 'tied',
  );
  if (!first || !next || first.sites.length !== next.sites.length) return '';
  const [own, other] = [first, next].map(lostDollars);
  if (own !== undefined && other !== undefined && isLess(own, other, DOLLAR_STEP))
    return ` It is named first because least given money lapses with it.`;
  const [few, more] = [first.busySeasonHours, next.busySeasonHours];
  if (isLess(few, more, HOUR_STEP))
    return ` It is named first because it adds the least care: at most ${hoursInWords(few)} in a ${first.busySeason || next.busySeason}, the next ${hoursInWords(more)}.`;
  return ' It is named first by its number alone: in given money and hours of care they are alike.';
}

function nextBest(campus: Campus, choices: readonly ChoiceRow[]): string {
  const worse = choices.find(
    (c) => (c.standing === 'found-worse' || c.standing === 'worse') && c.sites.length < 2,
  );
  if (!worse?.regret) return '';
  const how = worse.standing === 'worse' ? 'proven' : 'found, not proven';
  const name = worse.sites.length === 0 ? 'building none' : worse.name;
  return ` The nearest of the others, ${name}, is worse: ${amountInWords(campus, worse.regret)} (${how}).`;
}

function tests(couldBecome: readonly CouldBecome[]): string {
  if (couldBecome.length === 0) return '';
  return ` ${counted(couldBecome.length, 'more site needs', 'more sites need')} a test or permit before ${couldBecome.length === 1 ? 'it' : 'they'} could compete.`;
}
