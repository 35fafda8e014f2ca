import type { MigrationInterface, QueryRunner } from 'typeorm';

/** Questions about plans, with the lease of the worker that answers and the answer. */
export class Explanations1700000000002 implements MigrationInterface {
  readonly name = 'Explanations1700000000002';

  async up(runner: QueryRunner): Promise<void> {
    for (const statement of [explanation, ofPlan, waiting]) await runner.query(statement);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('DROP TABLE explanation');
  }
}

const explanation = `
  CREATE TABLE explanation (
    id uuid PRIMARY KEY,
    plan_id uuid NOT NULL REFERENCES plan,
    question json NOT NULL,
    seconds double precision NOT NULL CHECK (seconds > 0),
    state text NOT NULL CHECK (state IN ('queued', 'working', 'done', 'failed')),
    attempts integer NOT NULL CHECK (attempts >= 0),
    lease_holder uuid,
    lease_renewed_at timestamptz,
    progress json,
    answer json,
    problem text,
    asked_at timestamptz NOT NULL,
    finished_at timestamptz,
    CHECK ((state = 'working') = (lease_holder IS NOT NULL)),
    CHECK ((lease_holder IS NULL) = (lease_renewed_at IS NULL)),
    CHECK ((state = 'done') = (answer IS NOT NULL)),
    CHECK ((state = 'failed') = (problem IS NOT NULL)),
    CHECK ((state IN ('done', 'failed')) = (finished_at IS NOT NULL))
  )`;

const ofPlan = 'CREATE INDEX explanation_of_plan ON explanation (plan_id, asked_at)';

const waiting = `
  CREATE INDEX explanation_waiting ON explanation (asked_at)
    WHERE state IN ('queued', 'working')`;
