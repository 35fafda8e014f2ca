import type { Command } from 'commander';
import { nextSite, type NextSiteOptions } from './commands/next-site.js';
import { solveSeconds, wholeOrZero, wholePositive } from './option-values.js';
import type { Output } from './output.js';

/** Commands that ask a question of a plan, by planning changed campuses again. */
export function addQuestionCommands(
  command: (usage: string, description: string) => Command,
  output: Output,
  done: (code: number) => void,
): void {
  const question = (usage: string, description: string) =>
    command(usage, description)
      .option('--seconds <n>', 'answer within this many seconds (default 28)', solveSeconds)
      .option(
        '--work <n>',
        'rounds of search for each re-solve, in place of the time',
        wholePositive,
      )
      .option('--seed <n>', 'seed of the search', wholeOrZero, 1);

  question('next-site <campus> [plan]', 'Which site next year, and why not the others.')
    .option('--top <n>', 'choices to print', wholePositive, 6)
    .action(async (campus: string, plan: string | undefined, options: NextSiteOptions) =>
      done(await nextSite({ campus, ...(plan === undefined ? {} : { plan }) }, options, output)),
    );
}
