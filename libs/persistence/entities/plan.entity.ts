import { Column, Entity, PrimaryColumn } from 'typeorm';

/** A verified plan. A trigger refuses every change. */
@Entity('plan')
export class PlanEntity {
  @PrimaryColumn({ type: 'uuid' })
  id!: string;

  @Column({ name: 'campus_id', type: 'uuid' })
  campusId!: string;

  @Column({ name: 'campus_version', type: 'integer' })
  campusVersion!: number;

  @Column({ type: 'integer' })
  seed!: number;

  /** Null only for a plan that came in by a bundle and states none. */
  @Column({ name: 'limit_seconds', type: 'double precision', nullable: true })
  limitSeconds!: number | null;

  @Column({ name: 'limit_work', type: 'double precision', nullable: true })
  limitWork!: number | null;

  @Column({ name: 'limit_gap', type: 'double precision', nullable: true })
  limitGap!: number | null;

  @Column({ name: 'solver_version', type: 'text' })
  solverVersion!: string;

  @Column({ type: 'text' })
  ending!: string;

  @Column({ type: 'text' })
  origin!: string;

  /** JSON as text, byte for byte as solved. */
  @Column({ type: 'text' })
  document!: string;

  @Column({ type: 'text' })
  overview!: string;

  @Column({ name: 'solved_at', type: 'timestamptz' })
  solvedAt!: Date;
}
