/**
 * Plans near a relaxation, on small generated programs. HiGHS is the second way: what a dive makes whole
 * is a point of the model, and with people held near those of a plan the plan itself stays.
 */
import { beforeAll, describe, expect, test } from 'vitest';
import type { Campus } from '#domain/campus.js';
import { yearIndexOf } from '#domain/calendar.js';
import type { PositionType } from '#domain/labor.js';
import type { Decisions } from '#domain/plan.js';
import type { Model } from '#mip/model.js';
import type { Solver } from '#mip/solver.js';
import { withOpen } from '#mip/with-open.js';
import { groundOf } from '#optimizer/columns/ground-of.js';
import { NOTHING_COUNTED_OUT } from '#optimizer/counts/count-columns.js';
import { dive, diveColumns, type Dived } from '#optimizer/dive/dive.js';
import { settlePeople, type People } from '#optimizer/dive/settle-people.js';
import { nearPeople, peopleOf } from '#optimizer/improve/near-people.js';
import { planModel, type PlanModel } from '#optimizer/model/plan-model.js';
import { readDecisions } from '#optimizer/model/read-decisions.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import { seededRandom, type Random } from '#units/random.js';
import { SMALL_PROGRAMS, smallCampus, type SmallProgram } from '../support/small-programs.js';

let solver: Solver;
beforeAll(async () => {
  solver = await loadHighsSolver();
});

function modelOf(of: SmallProgram): PlanModel & { campus: Campus } {
  const campus = smallCampus(of);
  const ground = { ...groundOf(campus), counted: NOTHING_COUNTED_OUT };
  const held = new Map([['unserved-total', 0]]);
  return { ...planModel(ground, 'benefit', held), campus };
}

const opened = { seed: 1, changing: 'bounds', shouldStop: () => false } as const;

/** The model with the lives and people of a point. */
function heldAt(made: PlanModel, values: Float64Array): Model {
  const { lives, people, ...bounds } = diveColumns(made);
  const [lower, upper] = [Float64Array.from(bounds.lower), Float64Array.from(bounds.upper)];
  for (const column of [...lives, ...people.flatMap((p) => p.columns)])
    lower[column] = upper[column] = Math.round(values[column] ?? 0);
  return { ...made.model, lower, upper };
}

/** A dive that nothing cuts short. */
function divedIn(made: PlanModel, surePeople: People, random?: Random): Dived | undefined {
  return withOpen(solver, { ...opened, model: made.model }, (lp) =>
    dive(lp, {
      ...diveColumns(made),
      surePeople,
      sign: 1,
      ...(random ? { random } : {}),
      patience: 10,
      done: () => false,
    }),
  );
}

const isWhole = (value: number | undefined) =>
  Math.abs((value ?? NaN) - Math.round(value ?? NaN)) < 1e-4;

describe.each(SMALL_PROGRAMS)('$name', (of) => {
  test('a dive ends with whole people; where its lives are whole, it is worth at least what the solver makes of them', () => {
    const made = modelOf(of);
    const optimum = solver.solve(made.model, { limits: {}, seed: 1 });
    if (optimum.kind !== 'optimal') return expect.fail('the program has no plan');
    const best = readDecisions(made.columns, optimum.values);
    for (const random of [undefined, seededRandom(of.seed)]) {
      const on = diveColumns(made);
      const dived = divedIn(made, peopleOf(made, best), random);
      if (!dived) return expect.fail('the dive came to nothing');
      const { values } = dived;
      const people = on.people.flatMap((p) => p.columns);
      expect(people.every((column) => isWhole(values[column]))).toBe(true);
      if (!on.lives.every((column) => isWhole(values[column]))) continue;
      const whole = solver.solve(heldAt(made, values), { limits: {}, seed: 1 });
      if (whole.kind !== 'optimal') continue;
      const reached = made.model.objective.reduce((sum, c, j) => sum + c * (values[j] ?? 0), 0);
      expect(reached).toBeGreaterThanOrEqual(whole.objective * (1 - 1e-6));
      expect(whole.objective).toBeLessThanOrEqual(optimum.objective * (1 + 1e-6));
    }
  });

  test('people that a dive has settled stay as they are while it makes lives whole', () => {
    const made = modelOf(of);
    const optimum = solver.solve(made.model, { limits: {}, seed: 1 });
    if (optimum.kind !== 'optimal') return expect.fail('the program has no plan');
    const surePeople = peopleOf(made, readDecisions(made.columns, optimum.values));
    const dived = divedIn(made, surePeople);
    if (!dived) return expect.fail('the dive came to nothing');
    const columns = diveColumns(made).people.flatMap((p) => p.columns);
    expect(columns.every((column) => isWhole(dived.settled.values[column]))).toBe(true);
    for (const column of columns)
      expect(dived.values[column]).toBeCloseTo(dived.settled.values[column] ?? NaN, 4);
  });

  test('settled people are worth no less than those to begin from, and no more than fractions of people are', () => {
    const made = modelOf(of);
    const optimum = solver.solve(made.model, { limits: {}, seed: 1 });
    const relaxed = solver.solve(made.model, { limits: {}, seed: 1, relaxed: true });
    if (optimum.kind !== 'optimal' || relaxed.kind !== 'optimal')
      return expect.fail('the program has no plan');
    const start = peopleOf(made, readDecisions(made.columns, optimum.values));
    const { people, lower, upper } = diveColumns(made);
    const columns = people.flatMap((p) => p.columns);
    expect([...start.keys()].sort()).toEqual([...columns].sort());
    const settled = withOpen(solver, { ...opened, model: made.model }, (lp) => {
      const solved = () => {
        const outcome = lp.solve(10);
        if (outcome.kind !== 'optimal') return undefined;
        const { objective: worth, values, columnDuals: gains } = outcome;
        return { worth, values, gains };
      };
      const hold = (held: People) => {
        for (const [column, count] of held) lp.setColumn(column, count, count);
      };
      const found = settlePeople(start, { people, lower, upper, hold, solved, done: () => false });
      expect(solved()?.worth).toBeCloseTo(found?.worth ?? NaN, 4);
      return found;
    });
    if (!settled) return expect.fail('the people of a plan admit no point');
    // The people of the best plan admit at least the best plan.
    expect(settled.worth).toBeGreaterThanOrEqual(optimum.objective * (1 - 1e-6));
    expect(settled.worth).toBeLessThanOrEqual(relaxed.objective * (1 + 1e-6));
    expect(columns.every((column) => isWhole(settled.values[column]))).toBe(true);
  });

  test('near the people of the best plan the best plan is found, and no other people than asked for', () => {
    const made = modelOf(of);
    const optimum = solver.solve(made.model, { limits: {}, seed: 1 });
    if (optimum.kind !== 'optimal') return expect.fail('the program has no plan');
    const best = readDecisions(made.columns, optimum.values);
    for (const slack of [0, 1]) {
      const near = solver.solve(nearPeople(made, best, slack), { limits: {}, seed: 1 });
      if (near.kind !== 'optimal') return expect.fail('the plan at hand was left out');
      expect(near.objective).toBeCloseTo(optimum.objective, 4);
      const found = readDecisions(made.columns, near.values);
      expect(furthestApart(made.campus, best, found)).toBeLessThanOrEqual(slack);
    }
  });
});

/** The largest difference of two plans in the people of one position held in one year. */
function furthestApart(campus: Campus, a: Decisions, b: Decisions): number {
  const years = Array.from({ length: campus.calendar.horizonYears }, (_, y) => y);
  const heldIn = ({ hires }: Decisions, { id, term }: PositionType, year: number) =>
    hires
      .filter((h) => h.position === id)
      .map((h) => ({ ...h, began: yearIndexOf(campus.calendar, h.year) }))
      .filter(({ began }) => (term === 'recurring' ? began <= year : began === year))
      .reduce((sum, { count }) => sum + count, 0);
  return Math.max(
    ...campus.positions.flatMap((position) =>
      years.map((year) => Math.abs(heldIn(a, position, year) - heldIn(b, position, year))),
    ),
  );
}
