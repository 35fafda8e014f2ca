import { askAndPrint, type AskOptions } from '../ask.js';
import { CommandFailure, EXIT } from '../exit-codes.js';
import { whyLines } from '../lines/why-lines.js';
import type { Output } from '../output.js';
import { readCampus } from '../read-files.js';

export type WhyOptions = AskOptions & { readonly plan?: string };

/** `why CAMPUS.json SITE [YEAR]`: the site forced elsewhere, planned again, and compared. */
export async function askWhy(
  of: { readonly campus: string; readonly site: string; readonly year?: string },
  options: WhyOptions,
  output: Output,
): Promise<number> {
  const { campus } = await readCampus(of.campus);
  if (!campus.candidates.some((c) => c.id === of.site)) {
    const ids = campus.candidates.map((c) => c.id);
    const some = ids.length > 4 ? `${ids.slice(0, 3).join(', ')} and others` : ids.join(', ');
    throw new CommandFailure(EXIT.badInput, [
      `There is no candidate site ${of.site}; the file has ${some || 'none at all'}.`,
    ]);
  }
  const year = of.year === undefined ? {} : { year: yearOf(of.year) };
  const question = { kind: 'why' as const, site: of.site, ...year };
  const files = {
    campus: of.campus,
    ...(options.plan === undefined ? {} : { plan: options.plan }),
  };
  return askAndPrint({ question, files, options, lines: whyLines }, output);
}

/** `FY28`, `FY2028` or `2028`. */
function yearOf(text: string): number {
  const digits = /^(?:FY)?(\d{2}|\d{4})$/i.exec(text)?.[1];
  if (digits === undefined) {
    throw new CommandFailure(EXIT.badInput, [
      `${text} is no fiscal year; give one as FY28 or 2028.`,
    ]);
  }
  return digits.length === 2 ? 2000 + Number(digits) : Number(digits);
}
