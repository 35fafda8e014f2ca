import { InvalidArgumentError, Option, type Command } from 'commander';
import { MODEL_FORMATS } from '#planning/model-file.js';
import { exportFormats, exportTables } from '#contracts/http/exports.js';
import type { ExportOptions } from './commands/export.js';
import type { ImportOptions } from './commands/import.js';
import type { ModelOptions } from './commands/model.js';
import type { Output } from './output.js';

/** Commands that bring data in from other programs and out to them. */
export function addExchangeCommands(
  command: (usage: string, description: string) => Command,
  output: Output,
  done: (code: number) => void,
): void {
  command('export <campus> [plan]', 'Write a campus, or a plan of it, for other programs.')
    .addOption(
      new Option('--format <format>', 'what to write').choices(exportFormats).makeOptionMandatory(),
    )
    .requiredOption('--out <file>', 'file to write')
    .addOption(
      new Option('--table <table>', 'the one table of a CSV file')
        .choices(exportTables)
        .default('sites'),
    )
    .option('--year <year>', 'work year of a calendar (default: the first of the plan)', fiscalYear)
    .addOption(
      new Option('--audience <audience>', 'public: no lab values, notes or names of funds')
        .choices(['campus', 'public'])
        .default('campus'),
    )
    .action(async (campus: string, plan: string | undefined, options: ExportOptions) => {
      const { exportCampus } = await import('./commands/export.js');
      done(await exportCampus({ campus, plan }, options, output));
    });
  command('model <campus> [plan]', 'Write the mathematical model of a campus for other solvers.')
    .option('--tier <tier>', 'the tier to improve; earlier ones are held at the plan', 'benefit')
    .addOption(
      new Option('--format <format>', 'MPS in free format, or CPLEX LP')
        .choices(MODEL_FORMATS)
        .default('mps'),
    )
    .requiredOption('--out <file>', 'file to write')
    .action(async (campus: string, plan: string | undefined, options: ModelOptions) => {
      const { model } = await import('./commands/model.js');
      done(await model({ campus, plan }, options, output));
    });
  command('import <campus> <file>', 'Show what a file would change in a campus, and change it.')
    .option('--apply', 'save it, unless a record is rejected (default: only show)')
    .option('--out <file>', 'save as this file (default: in place of the campus file)')
    .action(async (campus: string, file: string, options: ImportOptions) => {
      const { importFile } = await import('./commands/import.js');
      done(await importFile({ campus, file }, options, output));
    });
}

function fiscalYear(text: string): string {
  const digits = /^(?:FY)?((?:19|20)\d\d)$/i.exec(text.trim())?.[1];
  if (digits === undefined) throw new InvalidArgumentError('It must be a year such as FY2028.');
  return `FY${digits}`;
}
