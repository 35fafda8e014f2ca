import type { CampusFile } from '#contracts/campus-file.schema.js';
import type { ConflictsAnswer } from '#explain/questions/conflicts/answer.js';
import { answerConflicts } from '#planning/answer-question.js';
import { repairedFile } from '#planning/repaired-file.js';
import { openResolverPool } from '#solving/resolver-pool.js';
import { beganAt, secondsToResolve, stepPrinter, type AskOptions } from '../ask.js';
import { CommandFailure, EXIT } from '../exit-codes.js';
import { jsonText, replaceFile } from '../file-bytes.js';
import { conflictsLines } from '../lines/conflicts-lines.js';
import { asJson, type Output } from '../output.js';
import { readCampus, type CampusInput } from '../read-files.js';
import { ensureCanSave } from '../save-place.js';

export interface ConflictsOptions extends AskOptions {
  /** The repair to write, as the answer counts them. */
  readonly writeRepair?: number;
  readonly out?: string;
}

/** Asks a campus alone what cannot all be kept, prints the answer, and writes a repaired file where one is wished. */
export async function askConflicts(
  path: string,
  options: ConflictsOptions,
  output: Output,
): Promise<number> {
  const began = beganAt(output);
  const wish = await wishOf(path, options);
  const input = await readCampus(path);
  const pool = openResolverPool({ seconds: secondsToResolve(options, began) });
  try {
    const asked = { campus: input.campus, resolver: pool, seed: options.seed };
    const answer = await answerConflicts({ ...asked, onStep: stepPrinter(output) });
    if (options.json) output.out(asJson(answer));
    else for (const line of conflictsLines(answer)) output.out(line);
    if (wish) output.note(await write(wish, { input, answer }));
    return answer.sets.length > 0 ? EXIT.noPlan : EXIT.fine;
  } finally {
    await pool.close();
  }
}

interface Wish {
  readonly repair: number;
  readonly out: string;
}

async function wishOf(path: string, { writeRepair, out }: ConflictsOptions) {
  if (writeRepair === undefined && out === undefined) return undefined;
  if (writeRepair === undefined || out === undefined) {
    const said =
      'Give both --write-repair, the number of the repair, and --out, the file to write.';
    throw new CommandFailure(EXIT.badInput, [said]);
  }
  await ensureCanSave(out, path);
  return { repair: writeRepair, out };
}

/** Writes the campus file as a repair changes it, and says so. */
async function write(
  { repair, out }: Wish,
  { input, answer }: { readonly input: CampusInput; readonly answer: ConflictsAnswer },
): Promise<string> {
  const row = answer.repairs[repair - 1];
  if (!row?.changes) {
    const said = row
      ? `Repair ${repair} was not worked out in the time; give more with --seconds.`
      : `There is no repair ${repair}; the answer has ${answer.repairs.length}.`;
    throw new CommandFailure(EXIT.badInput, [said]);
  }
  // A file that was loaded has passed the schema.
  const file = repairedFile(input.document as CampusFile, row.changes);
  await replaceFile(out, jsonText(file));
  return `Saved in ${out}, changed by repair ${repair}; the campus file itself is as it was.`;
}
