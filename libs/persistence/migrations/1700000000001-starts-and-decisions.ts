import type { MigrationInterface, QueryRunner } from 'typeorm';

/** The plan that a solve begins from, and the record of what was decided on a plan. */
export class StartsAndDecisions1700000000001 implements MigrationInterface {
  readonly name = 'StartsAndDecisions1700000000001';

  async up(runner: QueryRunner): Promise<void> {
    for (const statement of [startFromPlan, decision, decisionIndex, frozen]) {
      await runner.query(statement);
    }
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('DROP TABLE decision');
    await runner.query('ALTER TABLE solve_request DROP COLUMN start_from_plan');
  }
}

const startFromPlan = 'ALTER TABLE solve_request ADD COLUMN start_from_plan uuid REFERENCES plan';

const decision = `
  CREATE TABLE decision (
    id uuid PRIMARY KEY,
    campus_id uuid NOT NULL REFERENCES campus,
    plan_id uuid NOT NULL REFERENCES plan,
    site text NOT NULL,
    year text NOT NULL,
    verdict text NOT NULL CHECK (verdict IN ('approved', 'put off', 'refused')),
    decided_by text NOT NULL CHECK (decided_by <> ''),
    reason text NOT NULL CHECK (reason <> ''),
    dissent text NOT NULL,
    decided_at timestamptz NOT NULL
  )`;

const decisionIndex = 'CREATE INDEX decision_of_campus ON decision (campus_id, decided_at)';

const frozen = `
  CREATE TRIGGER decision_is_frozen BEFORE UPDATE OR DELETE ON decision
    FOR EACH ROW EXECUTE FUNCTION refuse_change()`;
