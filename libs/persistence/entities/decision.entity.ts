import { Column, Entity, PrimaryColumn } from 'typeorm';

/** What was decided about a site of a plan. A trigger refuses every change. */
@Entity('decision')
export class DecisionEntity {
  @PrimaryColumn({ type: 'uuid' })
  id!: string;

  @Column({ name: 'campus_id', type: 'uuid' })
  campusId!: string;

  @Column({ name: 'plan_id', type: 'uuid' })
  planId!: string;

  @Column({ type: 'text' })
  site!: string;

  @Column({ type: 'text' })
  year!: string;

  @Column({ type: 'text' })
  verdict!: string;

  @Column({ name: 'decided_by', type: 'text' })
  decidedBy!: string;

  @Column({ type: 'text' })
  reason!: string;

  @Column({ type: 'text' })
  dissent!: string;

  @Column({ name: 'decided_at', type: 'timestamptz' })
  decidedAt!: Date;
}
