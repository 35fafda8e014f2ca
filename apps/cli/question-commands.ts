import type { Command } from 'commander';
import type { AskedFiles, AskOptions } from './ask.js';
import type { ConflictsOptions } from './commands/conflicts.js';
import type { CompareOptions } from './commands/compare.js';
import type { FuturesOptions } from './commands/futures.js';
import type { NextSiteOptions } from './commands/plan-questions.js';
import type { WhyOptions } from './commands/why.js';
import { USUAL_FUTURES } from '#planning/answer-futures.js';
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
    .action(async (campus: string, plan: string | undefined, options: NextSiteOptions) => {
      const { askNextSite } = await import('./commands/plan-questions.js');
      done(await askNextSite(filesOf(campus, plan), options, output));
    });
  question('limits <campus> [plan]', 'What breaks first, and the next limit behind it.').action(
    async (campus: string, plan: string | undefined, options: AskOptions) => {
      const { askLimits } = await import('./commands/plan-questions.js');
      done(await askLimits(filesOf(campus, plan), options, output));
    },
  );
  question(
    'promises <campus> [plan]',
    'What each promise costs, and how long the yearly one lasts.',
  ).action(async (campus: string, plan: string | undefined, options: AskOptions) => {
    const { askPromises } = await import('./commands/plan-questions.js');
    done(await askPromises(filesOf(campus, plan), options, output));
  });
  question(
    'additions <campus> [plan]',
    'What one more position, sum, load or work day would buy.',
  ).action(async (campus: string, plan: string | undefined, options: AskOptions) => {
    const { askAdditions } = await import('./commands/plan-questions.js');
    done(await askAdditions(filesOf(campus, plan), options, output));
  });
  question(
    'conflicts <campus>',
    'Which promises and limits cannot all be kept, and what each repair costs.',
  )
    .option('--write-repair <n>', 'write the campus file as this repair changes it', wholePositive)
    .option('--out <file>', 'the file to write it to')
    .action(async (campus: string, options: ConflictsOptions) => {
      const { askConflicts } = await import('./commands/conflicts.js');
      done(await askConflicts(campus, options, output));
    });
  addFutures(command, output, done);
  addPlaceQuestions(question, output, done);
}

/** The question that plans nothing again, so that it has no rounds of search. */
function addFutures(command: Question, output: Output, done: (code: number) => void): void {
  command('futures <campus> [plan]', 'How the plan fares when things do not go as planned.')
    .option('--futures <n>', 'sampled futures (default 1000)', wholePositive, USUAL_FUTURES)
    .option('--seconds <n>', 'answer within this many seconds (default 28)', solveSeconds)
    .option('--seed <n>', 'seed of the futures', wholeOrZero, 1)
    .action(async (campus: string, plan: string | undefined, options: FuturesOptions) => {
      const { askFutures } = await import('./commands/futures.js');
      done(await askFutures(filesOf(campus, plan), options, output));
    });
}

function filesOf(campus: string, plan: string | undefined): AskedFiles {
  return { campus, ...(plan === undefined ? {} : { plan }) };
}

type Question = (usage: string, description: string) => Command;

/** Questions about one site, and about two plans or two versions of a campus. */
function addPlaceQuestions(question: Question, output: Output, done: (code: number) => void): void {
  question('why <campus> <site> [year]', 'Why a site stands where it does, or not in a year.')
    .option('--plan <file>', 'the plan that is asked about (default: one is made first)')
    .action(async (campus: string, site: string, year: string | undefined, options: WhyOptions) => {
      const { askWhy } = await import('./commands/why.js');
      const asked = { campus, site, ...(year === undefined ? {} : { year }) };
      done(await askWhy(asked, options, output));
    });
  question(
    'compare <a> <b>',
    'What differs between two plans, or made by each change of a campus file.',
  )
    .option('--campus <file>', 'the campus file of two plans')
    .action(async (a: string, b: string, options: CompareOptions) => {
      const { compare } = await import('./commands/compare.js');
      done(await compare({ a, b }, options, output));
    });
}
