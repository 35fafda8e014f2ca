import type { MigrationInterface, QueryRunner } from 'typeorm';

/** Questions about a version of a campus, which may have no plan, beside those about a plan. */
export class ExplanationsOfCampuses1700000000004 implements MigrationInterface {
  readonly name = 'ExplanationsOfCampuses1700000000004';

  async up(runner: QueryRunner): Promise<void> {
    for (const statement of done) await runner.query(statement);
  }

  async down(runner: QueryRunner): Promise<void> {
    for (const statement of undone) await runner.query(statement);
  }
}

const done = [
  `ALTER TABLE explanation
     ADD COLUMN campus_id uuid, ADD COLUMN campus_version integer,
     ALTER COLUMN plan_id DROP NOT NULL,
     ADD CONSTRAINT explanation_of_version
       FOREIGN KEY (campus_id, campus_version) REFERENCES campus_version,
     ADD CONSTRAINT explanation_whole_version
       CHECK ((campus_id IS NULL) = (campus_version IS NULL)),
     ADD CONSTRAINT explanation_of_one CHECK ((plan_id IS NULL) <> (campus_id IS NULL))`,
  'CREATE INDEX explanation_of_campus ON explanation (campus_id, asked_at)',
];

const undone = [
  'DELETE FROM explanation WHERE plan_id IS NULL',
  `ALTER TABLE explanation
     DROP COLUMN campus_id, DROP COLUMN campus_version,
     ALTER COLUMN plan_id SET NOT NULL`,
];
