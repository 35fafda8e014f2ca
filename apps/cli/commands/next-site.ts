import { ask, basePlan, type AskedFiles, type AskOptions } from '../ask.js';
import { EXIT } from '../exit-codes.js';
import { asJson, type Output } from '../output.js';
import { nextSiteLines } from '../lines/next-site-lines.js';

export type NextSiteOptions = AskOptions & { readonly top: number };

/** `next-site CAMPUS.json [PLAN.json]`: every choice for next year, followed to the end and compared. */
export async function nextSite(
  files: AskedFiles,
  options: NextSiteOptions,
  output: Output,
): Promise<number> {
  const began = performance.now();
  const base = await basePlan(files, options, output);
  const answer = await ask({ kind: 'next-site' }, base, { options, output, began });
  if (options.json) output.out(asJson(answer));
  else for (const line of nextSiteLines(answer, options.top)) output.out(line);
  return EXIT.fine;
}
