import { questionSchema } from '#contracts/http/explanations.js';
import { answerQuestion, type Asked } from '#planning/answer-question.js';
import type { JsonDocument } from '#planning/json-document.js';
import type { Explaining } from '#planning/ports/explaining.js';
import { openResolverPool } from '#solving/resolver-pool.js';
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
    const pool = openResolverPool({ seconds: seconds * RESOLVING_SHARE, signal });
    try {
      const asked: Asked = {
        ...{ campus, plan, tiers: report.tiers, resolver: pool, seed: SEED, effort: 'timed' },
        onStep: (message, share) => onProgress({ message, share }),
      };
      const answer = await answerOf(question, asked);
      if (signal.aborted) throw new Error('the work was called off');
      return JSON.parse(JSON.stringify(answer)) as JsonDocument;
    } finally {
      await pool.close();
    }
  },
};

function answerOf(question: JsonDocument, asked: Asked): Promise<object> {
  const parsed = questionSchema.parse(question);
  if (parsed.kind !== 'why') return answerQuestion(parsed, asked);
  const { kind, site, year } = parsed;
  return answerQuestion({ kind, site, ...(year === undefined ? {} : { year }) }, asked);
}
