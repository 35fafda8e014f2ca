import { questionSchema, type QuestionBody } from '#contracts/http/explanations.js';
import { answerFutures, MENDED_FUTURES } from '#planning/answer-futures.js';
import { answerQuestion, type Asked } from '#planning/answer-question.js';
import type { JsonDocument } from '#planning/json-document.js';
import type { Explaining } from '#planning/ports/explaining.js';
import { openFuturesPool } from '#solving/futures-pool.js';
import { openResolverPool, type PoolOptions } from '#solving/resolver-pool.js';
import { campusOf } from './campus-document.js';
import { savedPlan } from './saved-plan.js';

const SEED = 1;

/** Share of the time in which plans are made; the rest is for reading them. */
const RESOLVING_SHARE = 0.85;

/** Answers questions about plan documents on threads of this process. */
export const threadExplaining: Explaining = {
  async explain(
    { campus: document, plan: planDocument, question, seconds },
    { signal, onProgress },
  ) {
    const { campus, plan, report } = savedPlan(planDocument, campusOf(document));
    const parsed = questionSchema.parse(question);
    const onStep = (message: string, share: number) => onProgress({ message, share });
    if (parsed.kind === 'futures') {
      return futuresOf({ campus, plan, ...parsed, onStep }, { seconds, signal });
    }
    const pool = openResolverPool({ seconds: seconds * RESOLVING_SHARE, signal });
    try {
      const asked: Asked = {
        ...{ campus, plan, tiers: report.tiers, resolver: pool, seed: SEED, effort: 'timed' },
        onStep,
      };
      const answer = await answerOf(parsed, asked);
      if (signal.aborted) throw new Error('the work was called off');
      return JSON.parse(JSON.stringify(answer)) as JsonDocument;
    } finally {
      await pool.close();
    }
  },
};

type Replanned = Exclude<QuestionBody, { readonly kind: 'futures' }>;

function answerOf(parsed: Replanned, asked: Asked): Promise<object> {
  if (parsed.kind !== 'why') return answerQuestion(parsed, asked);
  const { kind, site, year } = parsed;
  return answerQuestion({ kind, site, ...(year === undefined ? {} : { year }) }, asked);
}

type FuturesAsked = Omit<Parameters<typeof answerFutures>[0], 'runner' | 'mended'>;

/** The plan in sampled futures, on threads of its own. */
async function futuresOf(asked: FuturesAsked, limits: PoolOptions): Promise<JsonDocument> {
  const runner = openFuturesPool(limits);
  try {
    const answer = await answerFutures({ ...asked, mended: MENDED_FUTURES, runner });
    if (limits.signal?.aborted) throw new Error('the work was called off');
    return JSON.parse(JSON.stringify(answer)) as JsonDocument;
  } finally {
    await runner.close();
  }
}
