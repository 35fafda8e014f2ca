import { siteEstimates, type EstimateWish } from '#planning/site-estimate.js';
import { estimateLines } from '../estimate-lines.js';
import { CommandFailure, EXIT } from '../exit-codes.js';
import { asJson, type Output } from '../output.js';
import { readCampus } from '../read-files.js';

export type EstimateOptions = Pick<EstimateWish, 'type' | 'units'> & { readonly json?: true };

/** `estimate CAMPUS.json SITE`: a site's whole build-up, every number open to what it was made of. */
export async function estimate(
  of: { readonly campus: string; readonly site: string },
  { type, units, json }: EstimateOptions,
  output: Output,
): Promise<number> {
  const { campus } = await readCampus(of.campus);
  const answer = siteEstimates(campus, { site: of.site, type, units });
  if (answer.kind !== 'estimated') {
    const { problem, remedy } = answer.problem;
    throw new CommandFailure(EXIT.badInput, [`${problem} ${remedy}`]);
  }
  if (json) output.out(asJson(answer.estimates));
  else for (const line of estimateLines(answer.estimates)) output.out(line);
  return EXIT.fine;
}
