import { answerCampusChanges, answerPlans } from '#planning/answer-comparison.js';
import { ask, basePlan, beganAt, type AskOptions } from '../ask.js';
import { CommandFailure, EXIT } from '../exit-codes.js';
import { campusesLines, plansLines } from '../lines/compare-lines.js';
import { asJson, type Output } from '../output.js';
import { readCampus, readPlan, readText } from '../read-files.js';

export type CompareOptions = AskOptions & { readonly campus?: string };

/** `compare A.json B.json`: two plans of one campus, or two versions of a campus, change by change. */
export async function compare(
  files: { readonly a: string; readonly b: string },
  options: CompareOptions,
  output: Output,
): Promise<number> {
  const kinds = await Promise.all([files.a, files.b].map(isCampusFile));
  if (kinds[0] !== kinds[1]) {
    throw new CommandFailure(EXIT.badInput, ['Give two plan files or two campus files.']);
  }
  return kinds[0] === true ? campuses(files, options, output) : plans(files, options, output);
}

async function isCampusFile(path: string): Promise<boolean> {
  return /"format"\s*:\s*"campus-plan\/campus"/.test(await readText(path));
}

async function plans(
  { a, b }: { readonly a: string; readonly b: string },
  options: CompareOptions,
  output: Output,
): Promise<number> {
  if (options.campus === undefined) {
    throw new CommandFailure(EXIT.badInput, ['Two plans need their campus file: --campus FILE.']);
  }
  const input = await readCampus(options.campus);
  const [first, second] = [await readPlan(a, input), await readPlan(b, input)];
  const answer = answerPlans(input.campus, first.plan, second.plan);
  if (options.json) output.out(asJson(answer));
  else for (const line of plansLines(answer)) output.out(line);
  return EXIT.fine;
}

async function campuses(
  { a, b }: { readonly a: string; readonly b: string },
  options: CompareOptions,
  output: Output,
): Promise<number> {
  const began = beganAt(output);
  const second = await readCampus(b);
  const base = await basePlan({ campus: a }, options, output);
  const documents = { first: base.input.document, second: second.document };
  const answer = await ask((asked) => answerCampusChanges(asked, documents), base, {
    options,
    output,
    began,
  });
  if (options.json) output.out(asJson(answer));
  else for (const line of campusesLines(answer)) output.out(line);
  return EXIT.fine;
}
