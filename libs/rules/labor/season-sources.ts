import type { SeasonInstance } from '#domain/calendar.js';
import { positionHours } from '#estimating/season-supply/positions.js';
import { poolHours } from '#estimating/season-supply/sources.js';
import type { Term } from '#mip/model.js';
import type { Columns } from '../columns.js';
import type { SourceTasks } from './closed-subsets.js';

/** People or events that give hours in one season. */
export interface Source {
  readonly tasks: SourceTasks;
  /** Hours that are there in any case. */
  readonly fixed: number;
  /** Hours for each unit of a column. */
  readonly terms: readonly Term[];
}

/** Pools, work days and positions of a season. */
export function seasonSources(columns: Columns, season: SeasonInstance): Source[] {
  const pools = columns.campus.pools
    .map((p) => ({ tasks: p.tasks, fixed: poolHours(p, season) / 100, terms: [] }))
    .filter((p) => p.fixed > 0);
  const days = columns.workDays
    .filter((w) => w.yearIndex === season.yearIndex && w.day.season === season.season.id)
    .map((w) => ({
      tasks: w.day.tasks,
      fixed: 0,
      terms: [{ variable: w.variable, coefficient: w.day.hoursEach / 100 }],
    }));
  return [...pools, ...days, ...positionSources(columns, season)];
}

function positionSources(columns: Columns, season: SeasonInstance): Source[] {
  return columns.campus.positions
    .map((position) => ({
      tasks: position.tasks,
      fixed: 0,
      terms: columns.hires
        .filter((h) => h.position === position)
        .map((h) => ({
          variable: h.variable,
          coefficient:
            positionHours(columns.campus.calendar, position, { startYear: h.yearIndex, season }) /
            100,
        }))
        .filter((t) => t.coefficient > 0),
    }))
    .filter((s) => s.terms.length > 0);
}
