import { InvalidArgumentError, Option, type Command } from 'commander';
import { documentKinds, PAPERS, type DocumentKind } from '#planning/ports/document-writer.js';
import type { DocumentsOptions } from './commands/documents.js';
import { solveSeconds } from './option-values.js';
import type { Output } from './output.js';

/** The command that writes documents. */
export function addDocumentCommands(
  command: (usage: string, description: string) => Command,
  output: Output,
  done: (code: number) => void,
): void {
  command('documents <campus> <plan>', 'Write the documents of a plan as PDF.')
    .requiredOption('--out <folder>', 'folder to write into; made where it is missing')
    .option('--only <names>', `only these, with commas between: ${documentKinds.join(', ')}`, kinds)
    .option('--site <id>', 'the site of documents about one site (default: those prepared first)')
    .addOption(new Option('--paper <size>', 'paper').choices(PAPERS).default('letter'))
    .option(
      '--final',
      'write them as approved; refused, with the reasons, where something is missing',
    )
    .option(
      '--with-answers [seconds]',
      'first ask next-site, limits, additions, promises, and futures of the plan, with so many seconds for each (default 28), and print the answers',
      solveSeconds,
    )
    .option('--approved-by <name>', 'who approved them, printed on every page; with --final')
    .action(async (campus: string, plan: string, options: DocumentsOptions) => {
      const { documents } = await import('./commands/documents.js');
      done(await documents({ campus, plan }, options, output));
    });
}

function kinds(text: string): DocumentKind[] {
  return text.split(',').map((name) => {
    const kind = documentKinds.find((one) => one === name.trim());
    if (kind === undefined) throw new InvalidArgumentError(`There is no document ${name.trim()}.`);
    return kind;
  });
}
