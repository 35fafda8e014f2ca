import type { MigrationInterface, QueryRunner } from 'typeorm';

/** Where a plan came from, and requests that carry a plan to be checked and kept. */
export class PlansByBundle1700000000003 implements MigrationInterface {
  readonly name = 'PlansByBundle1700000000003';

  async up(runner: QueryRunner): Promise<void> {
    for (const statement of [...origin, ...brought]) await runner.query(statement);
  }

  async down(runner: QueryRunner): Promise<void> {
    for (const statement of undone) await runner.query(statement);
  }
}

/** Plans kept before this came from a solve; from now on each says so itself. */
const origin = [
  `ALTER TABLE plan ADD COLUMN origin text NOT NULL DEFAULT 'solved'
     CHECK (origin IN ('solved', 'bundle'))`,
  'ALTER TABLE plan ALTER COLUMN origin DROP DEFAULT',
  'ALTER TABLE plan ALTER COLUMN limit_seconds DROP NOT NULL',
  `ALTER TABLE plan ADD CONSTRAINT plan_solved_in_time
     CHECK (origin = 'bundle' OR limit_seconds IS NOT NULL)`,
];

const brought = [
  'ALTER TABLE solve_request ADD COLUMN brought_name text',
  'ALTER TABLE solve_request ADD COLUMN brought_plan text',
  'ALTER TABLE solve_request ALTER COLUMN limit_seconds DROP NOT NULL',
  `ALTER TABLE solve_request ADD CONSTRAINT solve_request_carries
     CHECK ((brought_name IS NULL) = (brought_plan IS NULL))`,
  `ALTER TABLE solve_request ADD CONSTRAINT solve_request_in_time
     CHECK (brought_plan IS NOT NULL OR limit_seconds IS NOT NULL)`,
];

const undone = [
  `ALTER TABLE solve_request
     DROP CONSTRAINT solve_request_carries, DROP CONSTRAINT solve_request_in_time,
     DROP COLUMN brought_name, DROP COLUMN brought_plan,
     ALTER COLUMN limit_seconds SET NOT NULL`,
  `ALTER TABLE plan
     DROP CONSTRAINT plan_solved_in_time, DROP COLUMN origin,
     ALTER COLUMN limit_seconds SET NOT NULL`,
];
