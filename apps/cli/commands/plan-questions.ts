import { askAndPrint, type AskedFiles, type AskOptions } from '../ask.js';
import { additionsLines } from '../lines/additions-lines.js';
import { limitsLines } from '../lines/limits-lines.js';
import { nextSiteLines } from '../lines/next-site-lines.js';
import { promisesLines } from '../lines/promises-lines.js';
import type { Output } from '../output.js';

export interface NextSiteOptions extends AskOptions {
  /** Choices to print. */
  readonly top: number;
}

/** Which site next year, and why not the others. */
export function askNextSite(
  files: AskedFiles,
  options: NextSiteOptions,
  output: Output,
): Promise<number> {
  const lines = nextSiteLines(options.top);
  return askAndPrint({ question: { kind: 'next-site' }, files, options, lines }, output);
}

/** What breaks first, and the next limit behind it. */
export function askLimits(files: AskedFiles, options: AskOptions, output: Output): Promise<number> {
  return askAndPrint({ question: { kind: 'limits' }, files, options, lines: limitsLines }, output);
}

/** What each promise costs, and how long the yearly one lasts. */
export function askPromises(
  files: AskedFiles,
  options: AskOptions,
  output: Output,
): Promise<number> {
  const question = { kind: 'promises' as const };
  return askAndPrint({ question, files, options, lines: promisesLines }, output);
}

/** What one more position, sum, load or work day would buy. */
export function askAdditions(
  files: AskedFiles,
  options: AskOptions,
  output: Output,
): Promise<number> {
  const question = { kind: 'additions' as const };
  return askAndPrint({ question, files, options, lines: additionsLines }, output);
}
