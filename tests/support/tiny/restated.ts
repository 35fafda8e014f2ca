import type { Campus } from '#domain/campus.js';
import type { Commitment, CommitmentTest } from '#domain/commitment.js';
import type { Cents } from '#units/cents.js';
import { cents } from '#units/cents.js';
import { fiscalYear, type FiscalYear } from '#units/fiscal-year.js';

/** The same campus in another order of its lists: which comes first may decide nothing. */
export function reordered(campus: Campus): Campus {
  return {
    ...campus,
    candidates: [...campus.candidates].reverse(),
    buildTypes: [...campus.buildTypes].reverse(),
    pools: [...campus.pools].reverse(),
    funds: [...campus.funds].reverse(),
  };
}

/** The same campus with every year so many later. */
export function shifted(campus: Campus, by: number): Campus {
  const later = (year: FiscalYear) => fiscalYear(year + by);
  const { calendar } = campus;
  const planningDate = `${Number(calendar.planningDate.slice(0, 4)) + by}${calendar.planningDate.slice(4)}`;
  return {
    ...campus,
    calendar: {
      ...calendar,
      planningDate,
      firstYear: later(calendar.firstYear),
      priceYear: later(calendar.priceYear),
    },
    candidates: campus.candidates.map((site) => ({
      ...site,
      gates: site.gates.map((gate) =>
        gate.plannedClearFrom === undefined
          ? gate
          : { ...gate, plannedClearFrom: later(gate.plannedClearFrom) },
      ),
    })),
    existing: campus.existing.map((site) => ({ ...site, plantedYear: site.plantedYear + by })),
    funds: campus.funds.map((fund) => ({
      ...fund,
      inflows: fund.inflows.map((inflow) => ({
        ...inflow,
        year: later(inflow.year),
        lastYear: later(inflow.lastYear),
      })),
    })),
    construction: campus.construction.map((w) => ({ ...w, from: later(w.from), to: later(w.to) })),
    commitments: campus.commitments.map((c) => ({ ...c, test: shiftedTest(c, later) })),
  };
}

function shiftedTest(
  { test }: Commitment,
  later: (year: FiscalYear) => FiscalYear,
): CommitmentTest {
  switch (test.kind) {
    case 'sites-each-year':
      return { ...test, from: later(test.from), to: later(test.to) };
    case 'named-site':
    case 'area':
      return { ...test, by: later(test.by) };
    case 'no-new-positions-before':
      return { ...test, year: later(test.year) };
    case 'no-unserved-care':
    case 'only-build-types':
    case 'zone-balance':
      return test;
  }
}

/** The same campus in a currency of which a hundred make what one was before. */
export function inSmallMoney(campus: Campus): Campus {
  const small = (amount: Cents) => cents(amount * 100);
  return {
    ...campus,
    buildTypes: campus.buildTypes.map((t) => ({ ...t, costPerSqFt: small(t.costPerSqFt) })),
    care: Object.fromEntries(
      Object.entries(campus.care).map(([component, care]) => [
        component,
        { ...care, suppliesDollars: care.suppliesDollars * 100 },
      ]),
    ) as Campus['care'],
    positions: campus.positions.map((p) => ({
      ...p,
      annualCost: small(p.annualCost),
      firstYearCost: small(p.firstYearCost),
      oneTimeCost: small(p.oneTimeCost),
    })),
    funds: campus.funds.map((fund) => ({
      ...fund,
      floor: small(fund.floor),
      inflows: fund.inflows.map((inflow) => ({ ...inflow, amount: small(inflow.amount) })),
    })),
    standingCosts: campus.standingCosts.map((c) => ({ ...c, annual: small(c.annual) })),
    compost: {
      ...campus.compost,
      pricePerYard: small(campus.compost.pricePerYard),
      ...(campus.compost.other
        ? {
            other: {
              ...campus.compost.other,
              pricePerYard: small(campus.compost.other.pricePerYard),
            },
          }
        : {}),
    },
  };
}
