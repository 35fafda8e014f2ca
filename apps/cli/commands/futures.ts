import { answerFutures, MENDED_FUTURES } from '#planning/answer-futures.js';
import { openFuturesPool } from '#solving/futures-pool.js';
import { basePlan, beganAt, stepPrinter, type AskedFiles } from '../ask.js';
import { EXIT } from '../exit-codes.js';
import { futuresLines } from '../lines/futures-lines.js';
import { asJson, type Output } from '../output.js';

export interface FuturesOptions {
  readonly futures: number;
  readonly seed: number;
  readonly seconds?: number;
  readonly json?: true;
}

/** Seconds for the answer, unless told otherwise. */
const FUTURES_SECONDS = 28;

/** `futures CAMPUS.json [PLAN.json]`: the plan in many courses of events. */
export async function askFutures(
  files: AskedFiles,
  options: FuturesOptions,
  output: Output,
): Promise<number> {
  const began = beganAt(output);
  const { input, plan } = await basePlan(files, options, output);
  const used = (performance.now() - began) / 1000;
  const seconds = Math.max(1, (options.seconds ?? FUTURES_SECONDS) - used);
  const runner = openFuturesPool({ seconds });
  try {
    const { futures, seed } = options;
    const onStep = stepPrinter(output);
    const answer = await answerFutures({
      ...{ campus: input.campus, plan, seed, futures, mended: MENDED_FUTURES, runner, onStep },
    });
    if (options.json) output.out(asJson(answer));
    else for (const line of futuresLines(answer)) output.out(line);
    return EXIT.fine;
  } finally {
    await runner.close();
  }
}
