import { randomUUID } from 'node:crypto';
import { Brackets, type EntityManager } from 'typeorm';
import { anError, type Problem } from '#domain/problem.js';
import type { JsonDocument } from '#planning/json-document.js';
import { mostAttempts } from '#planning/lease-timing.js';
import type {
  Explanation,
  ExplanationClosing,
  ExplanationLease,
  ExplanationProgress,
  ExplanationState,
  ExplanationStore,
  NewExplanation,
  QuestionSubject,
} from '#planning/ports/explanation-store.js';
import type { Database } from '../database.js';
import { ExplanationEntity } from '../entities/explanation.entity.js';

const leaseless = { leaseHolder: null, leaseRenewedAt: null } as const;

/** Explanations in PostgreSQL; the table is its own queue. */
export class PostgresExplanationStore implements ExplanationStore {
  constructor(private readonly database: Database) {}

  add({ about, ...explanation }: NewExplanation): Promise<Explanation> {
    const row = {
      ...explanation,
      ...{ planId: null, campusId: null, campusVersion: null, ...about },
      ...leaseless,
      ...{ state: 'queued', attempts: 0, progress: null, answer: null, problem: null },
      ...{ askedAt: new Date(), finishedAt: null },
    };
    return this.database.change('repeatable', async (manager) => {
      const insert = manager.createQueryBuilder().insert().into(ExplanationEntity);
      await insert.values(row).orIgnore().execute();
      return explanationOf(row);
    });
  }

  load(id: string): Promise<Explanation | null> {
    return this.database.read(async (manager) => {
      const row = await manager.findOneBy(ExplanationEntity, { id });
      return row && explanationOf(row);
    });
  }

  listOf(planId: string): Promise<readonly Explanation[]> {
    return this.#list({ planId });
  }

  listOfCampus(campusId: string): Promise<readonly Explanation[]> {
    return this.#list({ campusId });
  }

  #list(where: { planId: string } | { campusId: string }): Promise<readonly Explanation[]> {
    return this.database.read(async (manager) => {
      const order = { askedAt: 'DESC', id: 'ASC' } as const;
      return (await manager.find(ExplanationEntity, { where, order })).map(explanationOf);
    });
  }

  take(lapsesAfterMilliseconds: number) {
    const holder = randomUUID();
    return this.database.change('once', async (manager) => {
      const lapsed = new Date(Date.now() - lapsesAfterMilliseconds);
      for (let row = await oldest(manager, lapsed); row; row = await oldest(manager, lapsed)) {
        const where = { id: row.id };
        if (row.attempts >= mostAttempts) {
          await manager.update(ExplanationEntity, where, closed({ problem: GIVEN_UP }));
          continue;
        }
        const taken = {
          state: 'working',
          attempts: row.attempts + 1,
          leaseHolder: holder,
          leaseRenewedAt: new Date(),
        };
        await manager.update(ExplanationEntity, where, taken);
        return { lease: { id: row.id, holder }, explanation: explanationOf({ ...row, ...taken }) };
      }
      return null;
    });
  }

  renew(lease: ExplanationLease, progress: ExplanationProgress | null): Promise<boolean> {
    const noted = progress === null ? {} : { progress };
    return this.#update(lease, { leaseRenewedAt: new Date(), ...noted });
  }

  finish(lease: ExplanationLease, closing: ExplanationClosing): Promise<boolean> {
    return this.#update(lease, closed(closing));
  }

  giveBack(lease: ExplanationLease): Promise<boolean> {
    return this.#update(lease, { ...leaseless, state: 'queued', attempts: () => 'attempts - 1' });
  }

  #update(
    { id, holder }: ExplanationLease,
    columns: Parameters<EntityManager['update']>[2],
  ): Promise<boolean> {
    return this.database.change('repeatable', async (manager) => {
      const { affected } = await manager.update(
        ExplanationEntity,
        { id, leaseHolder: holder },
        columns,
      );
      return affected === 1;
    });
  }
}

const GIVEN_UP = anError({ code: 'explanation-defect', record: 'explanation', field: '' }, [
  `The question ended its worker ${mostAttempts} times.`,
  'Please report it with the campus file, the plan and the question.',
]);

/** Locked; rows that another worker is taking at the moment are passed over. */
function oldest(manager: EntityManager, lapsed: Date): Promise<ExplanationEntity | null> {
  return manager
    .createQueryBuilder(ExplanationEntity, 'e')
    .where(
      new Brackets((either) =>
        either
          .where("e.state = 'queued'")
          .orWhere("e.state = 'working' AND e.leaseRenewedAt < :lapsed", { lapsed }),
      ),
    )
    .orderBy('e.askedAt')
    .limit(1)
    .setLock('pessimistic_write')
    .setOnLocked('skip_locked')
    .getOne();
}

function closed(closing: ExplanationClosing) {
  const ended = { ...leaseless, finishedAt: new Date() };
  return 'answer' in closing
    ? { ...ended, state: 'done', answer: closing.answer }
    : { ...ended, state: 'failed', problem: JSON.stringify(closing.problem) };
}

function subjectOf({
  planId,
  campusId,
  campusVersion,
}: Pick<ExplanationEntity, 'planId' | 'campusId' | 'campusVersion'>): QuestionSubject {
  if (planId !== null) return { planId };
  if (campusId !== null && campusVersion !== null) return { campusId, campusVersion };
  throw new Error('a question is about neither a plan nor a campus');
}

function explanationOf(row: ExplanationEntity): Explanation {
  const { leaseHolder: _holder, leaseRenewedAt: _renewed, ...rest } = row;
  const { planId, campusId, campusVersion, ...kept } = rest;
  return {
    ...kept,
    about: subjectOf({ planId, campusId, campusVersion }),
    // A constraint holds the state to these; the documents are kept as they were given.
    state: row.state as ExplanationState,
    question: row.question as JsonDocument,
    progress: row.progress as ExplanationProgress | null,
    answer: row.answer as JsonDocument | null,
    problem: row.problem === null ? null : (JSON.parse(row.problem) as Problem),
  };
}
