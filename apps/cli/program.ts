import { Command, CommanderError, Option } from 'commander';
import { prepareThreads } from '#solving/ready-threads.js';
import type { DefaultsOptions } from './commands/defaults.js';
import type { EstimateOptions } from './commands/estimate.js';
import { addExchangeCommands } from './exchange-commands.js';
import { addQuestionCommands } from './question-commands.js';
import { share, solveSeconds, wholeOrZero, wholePositive } from './option-values.js';
import type { SolveOptions } from './commands/solve.js';
import { addDocumentCommands } from './document-commands.js';
import { CommandFailure, EXIT } from './exit-codes.js';
import { terminal, type Output } from './output.js';

const EXIT_HELP = `
Exit codes: 0 fine; 2 a file or argument is not usable; 3 a plan does not pass its checks,
or a document is not ready to be final; 4 no plan can exist; 5 the solve ended before it found a plan.`;

/** Runs one command line; answers the exit code. What a command takes is loaded once it is asked for. */
export async function run(args: readonly string[], output: Output = terminal): Promise<number> {
  let code: number = EXIT.fine;
  const program = commandLine(output, (result) => (code = result));
  try {
    await program.parseAsync([...args], { from: 'user' });
    return code;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.fine : EXIT.badInput;
    if (!(error instanceof CommandFailure)) throw error;
    for (const line of error.lines) output.note(line);
    return error.exitCode;
  }
}

function commandLine(output: Output, done: (code: number) => void): Command {
  const program = new Command('campus-plan')
    .description(
      'Plans a campus program that turns lawn into planted landscape, a site or so a year.',
    )
    .addHelpText('after', EXIT_HELP)
    .showHelpAfterError(
      'Run "campus-plan help" or "campus-plan help COMMAND" to see what can be given.',
    )
    .exitOverride()
    .configureOutput({
      writeOut: (s) => output.out(s.trimEnd()),
      writeErr: (s) => output.note(s.trimEnd()),
    });
  const command = (usage: string, description: string) =>
    program
      .command(usage)
      .description(description)
      .option('--json', 'print JSON for machines')
      .addHelpText('after', EXIT_HELP);

  command('check <campus>', 'Report every problem of a campus file at once.').action(
    async (campus: string, options: { json?: true }) => {
      const { check } = await import('./commands/check.js');
      done(await check(campus, options, output));
    },
  );
  command('solve <campus>', 'Make a verified plan of a campus file.')
    .option(
      '--seconds <n>',
      'stop after this many seconds (default 60; none where work is given)',
      solveSeconds,
    )
    .option(
      '--work <n>',
      'stop after this many search nodes a tier; the same work and seed give the same plan',
      wholePositive,
    )
    .option('--gap <share>', 'stop within this share of proven, for example 0.01', share)
    .option('--seed <n>', 'seed of the search', wholeOrZero, 1)
    .option('--plan <file>', 'save the plan in this file')
    .option('--from <file>', 'go on from this plan; what no longer fits is mended')
    .option('--position <name>', 'position on benefit, for example "kitchen first"')
    .action(async (campus: string, options: SolveOptions) => {
      prepareThreads();
      const { solve } = await import('./commands/solve.js');
      done(await solve(campus, options, output));
    });
  command('verify <campus> <plan>', 'Recompute a saved plan from the campus file alone.').action(
    async (campus: string, plan: string, options: { json?: true }) => {
      const { verify } = await import('./commands/verify.js');
      done(await verify({ campus, plan }, options, output));
    },
  );
  addDocumentCommands(command, output, done);
  addQuestionCommands(command, output, done);
  addReferenceCommands(command, output, done);
  addExchangeCommands(command, output, done);
  return program;
}

/** Commands that show how numbers come about, and plan nothing. */
function addReferenceCommands(
  command: (usage: string, description: string) => Command,
  output: Output,
  done: (code: number) => void,
): void {
  const units = () =>
    new Option('--units <system>', 'units to tell values in').choices(UNITS).default('us');
  command('estimate <campus> <site>', 'Open every number of a site, down to its sources.')
    .option('--type <type>', 'only this build type (default: all that the site may become)')
    .addOption(units())
    .action(async (campus: string, site: string, options: EstimateOptions) => {
      const { estimate } = await import('./commands/estimate.js');
      done(await estimate({ campus, site }, options, output));
    });
  command('suitability <campus>', 'Rank all candidate sites, with how sure each rank is.').action(
    async (campus: string, options: { json?: true }) => {
      const { suitability } = await import('./commands/suitability.js');
      done(await suitability(campus, options, output));
    },
  );
  command('defaults [campus]', 'List the planning defaults, and what a campus measured instead.')
    .addOption(units())
    .action(async (campus: string | undefined, options: DefaultsOptions) => {
      const { defaults } = await import('./commands/defaults.js');
      done(await defaults(campus, options, output));
    });
}

const UNITS = ['us', 'metric'] as const satisfies readonly DefaultsOptions['units'][];
