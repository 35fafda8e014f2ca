import { seasonInstance, seasonLabel } from '#domain/calendar.js';
import { compostNeeds } from '#estimating/plan-needs/compost-needs.js';
import { allocateCompost } from '#optimizer/allocate/compost.js';
import { centiToYards, centiYards } from '#units/centiyards.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import { counted } from '#units/in-words.js';
import type { Ground } from '../ground.js';
import type { LimitRow } from '../plan-overview.js';

const yards = (cubicYards: number): string =>
  cubicYards < 0.5 ? 'less than 1 cubic yard' : counted(cubicYards, 'cubic yard');

/** The first season in which campus compost does not cover builds and top-dressing, had none been bought. */
export function compostLimit(ground: Ground): LimitRow {
  const { campus, plan, charges } = ground;
  const decisions = { ...plan.decisions, purchases: [] };
  const [short] = allocateCompost(campus, decisions, charges).shortages;
  if (!short) {
    return {
      resource: 'compost',
      year: null,
      label: null,
      shortBy: null,
      unit: 'cubic yards',
      ...tightest(ground),
    };
  }
  const season = seasonInstance(campus.calendar, short.at);
  const label = seasonLabel(campus.calendar, season);
  const amount = centiToYards(centiYards(short.amount));
  return {
    resource: 'compost',
    year: fiscalYearLabel(season.year),
    label,
    shortBy: amount,
    unit: 'cubic yards',
    figures: [],
    sentence: `${short.grade ? `Food ground takes ${yards(amount)} more of certified compost` : `Builds and older sites take ${yards(amount)} more`} than the campus has; the plan buys from then on.`,
  };
}

/** The season that uses most of the compost it could draw on. */
function tightest({ campus, plan, charges }: Ground): Pick<LimitRow, 'figures' | 'sentence'> {
  const { calendar, compost } = campus;
  const stock = new Map(plan.compost.map((entry) => [entry.season, entry.stock as number]));
  const uses = compostNeeds(campus, plan.decisions, charges).map((needs, season) => {
    const opening = compost.openingStock + (compost.other?.openingStock ?? 0);
    const before = season === 0 ? opening : (stock.get(season - 1) ?? 0);
    const [used, had] = [needs.builds + needs.topDress, before + needs.made];
    return { season, left: had - used, share: had > 0 ? used / had : 0 };
  });
  const most = uses.reduce((a, b) => (b.share > a.share ? b : a));
  const label = seasonLabel(calendar, seasonInstance(calendar, most.season));
  const left = centiToYards(centiYards(most.left));
  return {
    figures: [
      { what: 'tightest', value: label, unit: 'label' },
      { what: 'left', value: left, unit: 'cubic yards' },
    ],
    sentence: `Enough with none bought. Tightest: ${label}, ${yards(left)} left.`,
  };
}
