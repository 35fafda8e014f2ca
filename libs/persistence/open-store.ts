import type { CampusStore } from '#planning/ports/campus-store.js';
import type { DecisionStore } from '#planning/ports/decision-store.js';
import type { ExplanationStore } from '#planning/ports/explanation-store.js';
import type { PlanStore } from '#planning/ports/plan-store.js';
import type { SolveQueue } from '#planning/ports/solve-queue.js';
import type { SolveRequestStore } from '#planning/ports/solve-request-store.js';
import { Database } from './database.js';
import { dataSourceFor } from './data-source.js';
import { migrate } from './migrate.js';
import { JobBoard } from './queue/job-board.js';
import { PostgresSolveQueue } from './queue/postgres-solve-queue.js';
import { retrying } from './retrying.js';
import { PostgresCampusStore } from './stores/postgres-campus-store.js';
import { PostgresDecisionStore } from './stores/postgres-decision-store.js';
import { PostgresExplanationStore } from './stores/postgres-explanation-store.js';
import { PostgresPlanStore } from './stores/postgres-plan-store.js';
import { PostgresSolveRequestStore } from './stores/postgres-solve-request-store.js';

/** Every adapter of one database. */
export interface OpenStore {
  readonly campuses: CampusStore;
  readonly plans: PlanStore;
  readonly requests: SolveRequestStore;
  readonly queue: SolveQueue;
  readonly decisions: DecisionStore;
  readonly explanations: ExplanationStore;
  close(): Promise<void>;
}

/** Connects to a PostgreSQL, embedded or not, and brings its tables up to date. */
export async function openStore(
  url: string,
  onError: (error: unknown) => void,
): Promise<OpenStore> {
  const source = dataSourceFor(url);
  await retrying('repeatable', () => source.initialize());
  await retrying('repeatable', () => migrate(source));
  const jobs = await retrying('repeatable', () => JobBoard.open(source, onError));
  const database = new Database(source);
  return {
    campuses: new PostgresCampusStore(database),
    plans: new PostgresPlanStore(database),
    requests: new PostgresSolveRequestStore(database),
    queue: new PostgresSolveQueue(database, jobs),
    decisions: new PostgresDecisionStore(database),
    explanations: new PostgresExplanationStore(database),
    close: async () => {
      await jobs.close();
      await source.destroy();
    },
  };
}
