import {
  campusQuestionSchema,
  questionSchema,
  type QuestionBody,
} from '#contracts/http/explanations.js';
import { answerFutures, MENDED_FUTURES } from '#planning/answer-futures.js';
import { answerConflicts, answerQuestion, type Asked } from '#planning/answer-question.js';
import type { JsonDocument } from '#planning/json-document.js';
import type { Explaining, ExplainingJob } from '#planning/ports/explaining.js';
import { openFuturesPool } from '#solving/futures-pool.js';
import { openResolverPool, type PoolOptions, type ResolverPool } from '#solving/resolver-pool.js';
import { campusOf } from './campus-document.js';
import { savedPlan } from './saved-plan.js';

const SEED = 1;

/** Share of the time in which plans are made; the rest is for reading them. */
const RESOLVING_SHARE = 0.85;

/** Answers questions about plan and campus documents on threads of this process. */
export const threadExplaining: Explaining = {
  explain: (job, hooks) =>
    job.plan === null ? ofCampus(job, hooks) : ofPlan({ ...job, plan: job.plan }, hooks),
};

type Hooks = Parameters<Explaining['explain']>[1];

async function ofCampus(
  { campus: document, question, seconds }: ExplainingJob,
  { signal, onProgress }: Hooks,
): Promise<JsonDocument> {
  campusQuestionSchema.parse(question);
  const campus = campusOf(document);
  const onStep = (message: string, share: number) => onProgress({ message, share });
  return onPool({ seconds, signal }, (resolver) =>
    answerConflicts({ campus, resolver, seed: SEED, onStep }),
  );
}

async function ofPlan(
  job: ExplainingJob & { readonly plan: JsonDocument },
  { signal, onProgress }: Hooks,
): Promise<JsonDocument> {
  const { seconds } = job;
  const { campus, plan, report } = savedPlan(job.plan, campusOf(job.campus));
  const parsed = questionSchema.parse(job.question);
  const onStep = (message: string, share: number) => onProgress({ message, share });
  if (parsed.kind === 'futures') {
    return futuresOf({ campus, plan, ...parsed, onStep }, { seconds, signal });
  }
  const tiers = report.tiers;
  return onPool({ seconds, signal }, (resolver) =>
    answerOf(parsed, { campus, plan, tiers, resolver, seed: SEED, effort: 'timed', onStep }),
  );
}

/** What is worked out on threads that are opened for it alone. */
async function onPool(
  { seconds, signal }: { readonly seconds: number; readonly signal: AbortSignal },
  work: (resolver: ResolverPool) => Promise<object>,
): Promise<JsonDocument> {
  const pool = openResolverPool({ seconds: seconds * RESOLVING_SHARE, signal });
  try {
    const answer = await work(pool);
    if (signal.aborted) throw new Error('the work was called off');
    return JSON.parse(JSON.stringify(answer)) as JsonDocument;
  } finally {
    await pool.close();
  }
}

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
