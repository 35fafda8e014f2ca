import type { Command } from 'commander';
import { askAndPrint, askConflicts, type AskedFiles, type AskOptions } from './ask.js';
import { limitsLines } from './lines/limits-lines.js';
import { nextSiteLines } from './lines/next-site-lines.js';
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
  const filesOf = (campus: string, plan: string | undefined): AskedFiles => ({
    campus,
    ...(plan === undefined ? {} : { plan }),
  });

  question('next-site <campus> [plan]', 'Which site next year, and why not the others.')
    .option('--top <n>', 'choices to print', wholePositive, 6)
    .action(async (campus: string, plan: string | undefined, options: AskOptions & Top) => {
      const lines = nextSiteLines(options.top);
      const asking = { question: { kind: 'next-site' as const }, options, lines };
      done(await askAndPrint({ ...asking, files: filesOf(campus, plan) }, output));
    });
  question('limits <campus> [plan]', 'What breaks first, and the next limit behind it.').action(
    async (campus: string, plan: string | undefined, options: AskOptions) => {
      const asking = { question: { kind: 'limits' as const }, options, lines: limitsLines };
      done(await askAndPrint({ ...asking, files: filesOf(campus, plan) }, output));
    },
  );
  question(
    'conflicts <campus>',
    'Which promises and limits cannot all be kept, and what each repair costs.',
  ).action(async (campus: string, options: AskOptions) =>
    done(await askConflicts(campus, options, output)),
  );
}

interface Top {
  readonly top: number;
}
