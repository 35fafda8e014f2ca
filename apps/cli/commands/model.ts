import { tierNames, modelFile, type ModelFormat } from '#planning/model-file.js';
import { CommandFailure, EXIT } from '../exit-codes.js';
import { asJson, type Output } from '../output.js';
import { readCampus, readPlan, writeText } from '../read-files.js';
import { ensureCanSave } from '../save-place.js';

export interface ModelOptions {
  readonly tier: string;
  readonly format: ModelFormat;
  readonly out: string;
  readonly json?: true;
}

/** `model CAMPUS.json [PLAN.json] --tier TIER --format mps|lp --out FILE`: what a solver is asked, for other solvers. */
export async function model(
  files: { readonly campus: string; readonly plan: string | undefined },
  { tier, format, out, json }: ModelOptions,
  output: Output,
): Promise<number> {
  const input = await readCampus(files.campus);
  await ensureCanSave(out, files.campus);
  const given = files.plan === undefined ? undefined : await readPlan(files.plan, input);
  const campus = given?.campus ?? input.campus;
  const tiers = tierNames(campus);
  if (!tiers.includes(tier)) {
    const remedy = `The tiers of this campus are ${tiers.join(', ')}.`;
    throw new CommandFailure(EXIT.badInput, [
      `--tier ${tier}: there is none of that name.`,
      remedy,
    ]);
  }
  const reached = given?.file.tiers;
  const text = modelFile(campus, { tier, format, ...(reached ? { reached } : {}) });
  await writeText(out, text);
  const heldTiers = tiers
    .slice(0, tiers.indexOf(tier))
    .filter((name) => reached?.some((t) => t.name === name));
  output.out(json ? asJson({ file: out, tier, heldTiers }) : `Wrote ${out}`);
  if (!json && heldTiers.length === 0 && tier !== tiers[0]) output.note(NOTHING_HELD);
  return EXIT.fine;
}

const NOTHING_HELD =
  'No earlier tier is held; give a plan file after the campus file to hold them at what it reaches.';
