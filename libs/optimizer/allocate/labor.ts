import { plannedSeasons, type SeasonInstance } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { MAY_GO_UNSERVED, TASK_CLASSES, type TaskClass } from '#domain/labor.js';
import type { Decisions, LaborEntry, UnservedEntry } from '#domain/plan.js';
import { laborNeeds } from '#estimating/plan-needs/labor-needs.js';
import { laborSources, type LaborSource } from '#estimating/season-supply/sources.js';
import type { CampusCharges } from '#estimating/site-charges/campus-charges.js';
import { centiHours } from '#units/centihours.js';
import { FlowNetwork } from './max-flow.js';
import type { Shortage } from './shortage.js';

export interface LaborAllocation {
  readonly labor: readonly LaborEntry[];
  readonly unserved: readonly UnservedEntry[];
  /** Hours of work that must be done and has no one to do it. */
  readonly shortages: readonly Shortage[];
}

/**
 * Allots every season's hours in whole hundredths: work that must be done first, then food care, then
 * harvest, then other care. What remains of care is unserved, and is the least that it can be.
 */
export function allocateLabor(
  campus: Campus,
  decisions: Decisions,
  charges: CampusCharges,
): LaborAllocation {
  const needs = laborNeeds(campus, decisions, charges);
  const seasons = plannedSeasons(campus.calendar).map((season) =>
    allocateSeason(
      season,
      needs[season.index] ?? NO_NEEDS,
      laborSources(campus, decisions, season),
    ),
  );
  return {
    labor: seasons.flatMap((s) => s.labor),
    unserved: seasons.flatMap((s) => s.unserved),
    shortages: seasons.flatMap((s) => s.shortages),
  };
}

type Needs = Readonly<Record<TaskClass, number>>;

const NO_NEEDS = Object.fromEntries(TASK_CLASSES.map((c) => [c, 0])) as Needs;

/** Order in which classes are served; the first group must be. */
const SERVING_ORDER: readonly (readonly TaskClass[])[] = [
  TASK_CLASSES.filter((c) => !MAY_GO_UNSERVED.includes(c)),
  ['care-food'],
  ['harvest'],
  ['care-other'],
];

export function allocateSeason(
  season: SeasonInstance,
  needs: Needs,
  sources: readonly LaborSource[],
): LaborAllocation {
  const network = seasonNetwork(sources);
  for (const group of SERVING_ORDER) {
    for (const c of group) network.flow.widen(network.needEdge(c), needs[c]);
    network.flow.send(network.source, network.sink);
  }
  return readSeason({ season, sources, network });
}

interface SeasonNetwork {
  readonly flow: FlowNetwork;
  readonly source: number;
  readonly sink: number;
  needEdge(taskClass: TaskClass): number;
  readonly given: readonly { source: LaborSource; taskClass: TaskClass; edge: number }[];
}

/** source -> class needs are the senders: classes first, so that served classes stay served. */
function seasonNetwork(sources: readonly LaborSource[]): SeasonNetwork {
  const source = 0;
  const sink = 1 + TASK_CLASSES.length + sources.length;
  const flow = new FlowNetwork(sink + 1);
  const needEdges = TASK_CLASSES.map((_, c) => flow.addEdge(source, 1 + c, 0));
  const given = sources.flatMap((from, s) => {
    flow.addEdge(1 + TASK_CLASSES.length + s, sink, from.hours);
    return TASK_CLASSES.flatMap((taskClass, c) =>
      from.tasks.includes(taskClass)
        ? [
            {
              source: from,
              taskClass,
              edge: flow.addEdge(1 + c, 1 + TASK_CLASSES.length + s, from.hours),
            },
          ]
        : [],
    );
  });
  return { flow, source, sink, given, needEdge: (c) => needEdges[TASK_CLASSES.indexOf(c)] ?? 0 };
}

function readSeason(of: {
  season: SeasonInstance;
  sources: readonly LaborSource[];
  network: SeasonNetwork;
}): LaborAllocation {
  const { season, network } = of;
  const labor = network.given
    .map(({ source, taskClass, edge }) => ({
      season: season.index,
      source: source.id,
      taskClass,
      hours: centiHours(network.flow.flow(edge)),
    }))
    .filter((entry) => entry.hours > 0);
  const left = TASK_CLASSES.map((taskClass) => ({
    taskClass,
    hours: network.flow.roomLeft(network.needEdge(taskClass)),
  })).filter((l) => l.hours > 0);
  return {
    labor,
    unserved: left
      .filter((l) => MAY_GO_UNSERVED.includes(l.taskClass))
      .map((l) => ({ season: season.index, taskClass: l.taskClass, hours: centiHours(l.hours) })),
    shortages: left
      .filter((l) => !MAY_GO_UNSERVED.includes(l.taskClass))
      .map((l) => ({ resource: 'labor' as const, at: season.index, amount: l.hours })),
  };
}
