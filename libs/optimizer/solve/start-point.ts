import { yearIndexOf } from '#domain/calendar.js';
import { gradeOf, placementKey, type Decisions } from '#domain/plan.js';
import type { PartialPoint } from '#mip/solver.js';
import type { Columns } from '#rules/columns.js';

/** The whole-number columns of a model at given decisions. */
export function startPoint(columns: Columns, decisions: Decisions): PartialPoint {
  const year = (y: Decisions['hires'][number]['year']) => yearIndexOf(columns.campus.calendar, y);
  const key = (...parts: (string | number)[]) => parts.join('\u0000');
  const counts = new Map<string, number>([
    ...decisions.placements.map((p) => [key('build', placementKey(p)), 1] as const),
    ...decisions.hires.map((h) => [key('hire', h.position, year(h.year)), h.count] as const),
    ...decisions.workDays.map((w) => [key('days', w.workDay, year(w.year)), w.count] as const),
    ...decisions.purchases.map((p) => [key('buy', p.season, gradeOf(p)), p.cubicYards] as const),
  ]);
  const points = [
    ...columns.lifecycles.map(
      (l) => [l.variable, key('build', placementKey(l.placement))] as const,
    ),
    ...columns.hires.map((h) => [h.variable, key('hire', h.position.id, h.yearIndex)] as const),
    ...columns.workDays.map((w) => [w.variable, key('days', w.day.id, w.yearIndex)] as const),
    ...columns.purchases.map((p) => [p.variable, key('buy', p.season, p.grade)] as const),
  ];
  return {
    columns: points.map(([variable]) => variable.column),
    values: points.map(([, k]) => counts.get(k) ?? 0),
  };
}
