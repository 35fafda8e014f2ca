import type { Breach } from '#domain/breach.js';
import { yearAt, yearIndexOf } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { PositionType } from '#domain/labor.js';
import type { Hire } from '#domain/plan.js';
import { firstStartYear } from '#estimating/season-supply/positions.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import type { Check } from '../check.js';
import { frozenHires } from '../stability/frozen.js';

/**
 * Positions are whole, start after their lead time and within the horizon, and never exceed their
 * number. Those of a published plan's frozen years were asked for before: no lead time holds them.
 */
export const checkPositions: Check = (campus, plan) => [
  ...plan.decisions.hires.flatMap((hire) => hireBreaches(campus, hire)),
  ...campus.positions.flatMap((position) =>
    tooMany(
      campus,
      position,
      plan.decisions.hires.filter((h) => h.position === position.id),
    ),
  ),
];

function breach(record: string, message: string): Breach {
  return { rule: 'positions', record, message };
}

function hireBreaches(campus: Campus, hire: Hire): Breach[] {
  const position = campus.positions.find((p) => p.id === hire.position);
  if (!position)
    return [breach(hire.position, `${hire.position} is not a position type of this campus`)];
  if (!Number.isInteger(hire.count) || hire.count < 1) {
    return [breach(position.id, `${hire.count} of ${position.name} is not a whole number above 0`)];
  }
  const start = yearIndexOf(campus.calendar, hire.year);
  const first = firstStartYear(campus.calendar, position);
  const asked = frozenHires(campus).some(
    (h) => h.position === hire.position && h.year === hire.year,
  );
  if ((start >= first || asked) && start < campus.calendar.horizonYears) return [];
  const earliest = fiscalYearLabel(yearAt(campus.calendar, first));
  return [
    breach(
      position.id,
      `${position.name} starts in ${fiscalYearLabel(hire.year)}; with its lead time the earliest start is ${earliest}, and none starts after the horizon`,
    ),
  ];
}

function tooMany(campus: Campus, position: PositionType, hires: readonly Hire[]): Breach[] {
  const years = Array.from({ length: campus.calendar.horizonYears }, (_, i) =>
    yearAt(campus.calendar, i),
  );
  return years.flatMap((year) => {
    const held = hires
      .filter((h) => (position.term === 'recurring' ? h.year <= year : h.year === year))
      .reduce((sum, h) => sum + h.count, 0);
    if (held <= position.most) return [];
    return [
      breach(
        position.id,
        `${held} of ${position.name} are held in ${fiscalYearLabel(year)}; at most ${position.most} may be`,
      ),
    ];
  });
}
