import { anError, type Problem } from '#domain/problem.js';
import type { LeaseTiming } from '../lease-timing.js';
import type { CampusStore } from '../ports/campus-store.js';
import type { Explaining, ExplainingJob } from '../ports/explaining.js';
import type {
  Explanation,
  ExplanationClosing,
  ExplanationLease,
  ExplanationProgress,
  ExplanationStore,
  QuestionSubject,
} from '../ports/explanation-store.js';
import type { PlanStore } from '../ports/plan-store.js';
import { pause } from './pause.js';
import { planWithCampus } from './plan-with-campus.js';

export interface ExplanationPorts {
  readonly campuses: CampusStore;
  readonly plans: PlanStore;
  readonly explanations: ExplanationStore;
  readonly explaining: Explaining;
}

export interface ServeExplanationsOptions {
  readonly timing: LeaseTiming;
  readonly stopping: AbortSignal;
  /** Milliseconds to wait when nothing is asked or the store is away. */
  readonly pollEvery: number;
  readonly onError: (error: unknown) => void;
}

/** Answers one question after the other until the worker has to stop. */
export async function serveExplanations(
  ports: ExplanationPorts,
  options: ServeExplanationsOptions,
): Promise<void> {
  while (!options.stopping.aborted) {
    const worked = await serveOne(ports, options).catch((error: unknown) => {
      options.onError(error);
      return false;
    });
    if (!worked) await pause(options.pollEvery, options.stopping);
  }
}

/** False when nothing was asked. */
async function serveOne(
  ports: ExplanationPorts,
  options: ServeExplanationsOptions,
): Promise<boolean> {
  const taken = await ports.explanations.take(options.timing.lapsesAfter);
  if (taken === null) return false;
  const { lease, explanation } = taken;
  const work = new AbortController();
  const stop = () => work.abort();
  options.stopping.addEventListener('abort', stop, { once: true });
  const keeping = keepLease(ports.explanations, { lease, work, options });
  const closing = await closingOf(ports, explanation, {
    signal: work.signal,
    onProgress: keeping.note,
  });
  await keeping.stop();
  options.stopping.removeEventListener('abort', stop);
  if (options.stopping.aborted && 'problem' in closing) await ports.explanations.giveBack(lease);
  else await ports.explanations.finish(lease, closing);
  return true;
}

interface Kept {
  readonly lease: ExplanationLease;
  readonly work: AbortController;
  readonly options: ServeExplanationsOptions;
}

/** Renews the lease while the answer is worked out; a lost lease calls the work off. */
function keepLease(store: ExplanationStore, { lease, work, options }: Kept) {
  const ended = new AbortController();
  let latest: ExplanationProgress | null = null;
  const running = (async () => {
    while (!ended.signal.aborted) {
      await pause(options.timing.renewEvery / 3, ended.signal);
      if (ended.signal.aborted) return;
      const held = await store.renew(lease, latest).catch((error: unknown) => {
        options.onError(error);
        return true;
      });
      if (!held) work.abort();
    }
  })();
  return {
    note: (progress: ExplanationProgress) => (latest = progress),
    stop: () => {
      ended.abort();
      return running;
    },
  };
}

/** Never throws: a defect closes the question with a problem instead of a retry. */
async function closingOf(
  ports: ExplanationPorts,
  { about, question, seconds }: Explanation,
  hooks: Parameters<Explaining['explain']>[1],
): Promise<ExplanationClosing> {
  try {
    const documents = await documentsOf(ports, about);
    const job = { ...documents, question, seconds };
    return { answer: await ports.explaining.explain(job, hooks) };
  } catch (error) {
    return { problem: defect(error) };
  }
}

async function documentsOf(
  ports: ExplanationPorts,
  about: QuestionSubject,
): Promise<Pick<ExplainingJob, 'campus' | 'plan'>> {
  if ('planId' in about) {
    const found = await planWithCampus(ports, about.planId);
    if (found === null) throw new Error(`plan ${about.planId} is gone`);
    return { campus: found.campus.document, plan: found.plan.plan };
  }
  const { campusId, campusVersion } = about;
  const campus = await ports.campuses.load(campusId, campusVersion);
  if (campus === null) throw new Error(`version ${campusVersion} of campus ${campusId} is gone`);
  return { campus: campus.document, plan: null };
}

function defect(error: unknown): Problem {
  const message = error instanceof Error ? error.message : String(error);
  return anError({ code: 'explanation-defect', record: 'explanation', field: '' }, [
    `The question could not be answered: ${message}`,
    'Please report it with the campus file, the plan and the question.',
  ]);
}
