import type { Term } from '#mip/model.js';
import { ModelDraft } from '#mip/model-draft.js';
import type { Solver } from '#mip/solver.js';
import type { Payments } from '#optimizer/allocate/payment-network.js';

/**
 * Whether whole cents can pay every bill, by the definition written down as an integer program: balances
 * of each purse from year to year, no flows and no cuts.
 */
export function canBePaid(solver: Solver, { purses, frontings, bills }: Payments): boolean {
  const draft = new ModelDraft();
  // HiGHS wants a column and a row, also where nothing can be paid.
  draft.addVariable({ label: 'none', kind: 'continuous', upper: 0 });
  const whole = () => draft.addVariable({ label: '', kind: 'integer', upper: 1e6 });
  const spent = purses.map(({ first, last }, p) =>
    bills.flatMap((bill, b) =>
      bill.payers.has(p) && bill.yearIndex >= first && bill.yearIndex <= last
        ? [{ b, year: bill.yearIndex, variable: whole(), coefficient: 1 }]
        : [],
    ),
  );
  const fronted = frontings.map(({ first, last }, f) =>
    bills.flatMap((bill, b) =>
      bill.frontings.includes(f) && bill.yearIndex >= first && bill.yearIndex <= last
        ? [{ b, year: bill.yearIndex, variable: whole(), coefficient: 1 }]
        : [],
    ),
  );
  const add = (terms: readonly Term[], limit: { atLeast?: number; atMost?: number }) =>
    draft.addRow({ label: '', terms, ...limit });
  bills.forEach((bill, b) => {
    const pays = [...spent, ...fronted].flat().filter((t) => t.b === b);
    add(pays, { atLeast: bill.amount, atMost: bill.amount });
    const grants = new Set([...frontings.map((f) => f.grant), ...purses.map((p) => p.fund)]);
    for (const grant of grants) {
      const ratio = grant.matchRatio;
      if (ratio === undefined) continue;
      const matched = [
        ...fronted.flatMap((list, f) => (frontings[f]?.grant === grant ? list : [])),
        ...spent.flatMap((list, p) => (purses[p]?.fund === grant ? list : [])),
      ].filter((t) => t.b === b);
      add(matched, { atMost: (ratio / (1 + ratio)) * bill.amount + 1e-9 });
    }
  });
  purses.forEach((purse, p) => {
    for (let at = purse.first; at <= purse.last; at++) {
      const out = fronted.flatMap((list, f) => {
        const fronting = frontings[f];
        if (fronting?.purse !== p) return [];
        return list.filter((t) => t.year <= at && t.year + fronting.lag > at);
      });
      add([...(spent[p] ?? []).filter((t) => t.year <= at), ...out], { atMost: purse.amount });
    }
  });
  for (const grant of new Set(frontings.map((f) => f.grant))) {
    const all = fronted.flatMap((list, f) => (frontings[f]?.grant === grant ? list : []));
    add(all, { atMost: frontings.find((f) => f.grant === grant)?.most ?? 0 });
  }
  const outcome = solver.solve(draft.build('minimize', []), { limits: {}, seed: 1 });
  return outcome.kind === 'optimal';
}
