import { plannedYears, seasonInstance, seasonLabel } from '#domain/calendar.js';
import { gradeSupply } from '#domain/compost.js';
import { NO_DECISIONS } from '#domain/plan.js';
import { recurringSupplies } from '#estimating/plan-needs/money-needs.js';
import type { Term } from '#mip/model.js';
import type { ModelDraft } from '#mip/model-draft.js';
import type { Columns } from '#rules/columns.js';
import { addCommitmentRows } from '#rules/commitment-rows.js';
import type { UnservedColumn } from '#rules/labor/rows.js';
import { recurringCost } from '../tiers/recurring-cost.js';
import type { ModelParts } from './model-parts.js';

/**
 * Unserved hours of the worst season.
 *
 *     sum over classes c of unserved[i, c]  <=  peak     for each season i
 */
export function unservedPeak(draft: ModelDraft, unserved: readonly UnservedColumn[]): Term[] {
  if (unserved.length === 0) return [];
  const peak = draft.addVariable({ label: 'unserved peak', kind: 'continuous' });
  for (const season of new Set(unserved.map((u) => u.season))) {
    draft.addRow({
      label: `unserved peak ${season}`,
      terms: [
        ...unserved
          .filter((u) => u.season === season)
          .map(({ variable }) => ({ variable, coefficient: 1 })),
        { variable: peak, coefficient: -1 },
      ],
      atMost: 0,
    });
  }
  return [{ variable: peak, coefficient: 1 }];
}

/**
 * Points: of every life, and of every aspiration by the share of it that is kept.
 *
 *     sum over lives l of points[l] x[l]  +  sum over aspirations k of points[k] (1 - short[k] / whole[k])
 *
 * The constant is carried by a column fixed at 1, so that values and bounds need no correction.
 */
export function benefitTerms({ draft, columns, unserved }: ModelParts): Term[] {
  const lives = columns.lifecycles.map((l) => ({
    variable: l.variable,
    coefficient: l.benefit / 1000,
  }));
  const aspirations = columns.campus.commitments
    .filter((c) => c.strength === 'aspiration')
    .flatMap((c) => {
      const short = addCommitmentRows(draft, columns, { test: c.test, slack: 'allowed', unserved });
      const whole = short.reduce((sum, t) => sum + t.coefficient * upperOf(draft, t), 0);
      const one = draft.addVariable({
        label: `points ${c.id}`,
        kind: 'continuous',
        lower: 1,
        upper: 1,
      });
      if (!Number.isFinite(whole)) return [];
      return [
        { variable: one, coefficient: c.points },
        ...short.map((t) => ({ ...t, coefficient: (-t.coefficient * c.points) / whole })),
      ];
    });
  return [...lives, ...aspirations];
}

function upperOf(draft: ModelDraft, term: Term): number {
  return draft.upperOf(term.variable);
}

/**
 * Peak of the yearly recurring cost in dollars of the price year.
 *
 *     existing[y] + sum of supplies[l, y] x[l] + positions + compost bought  <=  peak     for each year y
 */
export function recurringPeak(draft: ModelDraft, columns: Columns): Term[] {
  const { campus, charges } = columns;
  const existing = recurringCost(campus, NO_DECISIONS, charges);
  const peak = draft.addVariable({ label: 'peak recurring cost', kind: 'continuous' });
  const terms: Term[][] = existing.map(() => [{ variable: peak, coefficient: -1 }]);
  addSupplies(columns, terms);
  addPositions(columns, terms);
  for (const { season, grade, variable } of columns.purchases) {
    const { yearIndex } = seasonInstance(campus.calendar, season);
    const { pricePerYard } = gradeSupply(campus.compost, grade);
    terms[yearIndex]?.push({ variable, coefficient: pricePerYard / 100 });
  }
  terms.forEach((row, year) => {
    const label = seasonLabel(
      campus.calendar,
      seasonInstance(campus.calendar, year * campus.calendar.seasons.length),
    );
    draft.addRow({
      label: `recurring cost ${label}`,
      terms: row,
      atMost: -(existing[year] ?? 0) / 100,
    });
  });
  return [{ variable: peak, coefficient: 1 }];
}

function addSupplies(columns: Columns, terms: Term[][]): void {
  for (const { variable, parts } of columns.lifecycles) {
    recurringSupplies(columns.campus, parts).forEach((base, year) => {
      if (base > 0) terms[year]?.push({ variable, coefficient: base / 100 });
    });
  }
}

function addPositions(columns: Columns, terms: Term[][]): void {
  const years = plannedYears(columns.campus.calendar);
  for (const { position, yearIndex, variable } of columns.hires) {
    const last = position.term === 'recurring' ? years - 1 : yearIndex;
    for (let y = yearIndex; y <= last; y++) {
      const cost = y === yearIndex ? position.firstYearCost : position.annualCost;
      terms[y]?.push({ variable, coefficient: cost / 100 });
    }
  }
}
