import { mostMatched } from '#estimating/cost/matching.js';
import { LeastPoint } from './least-point.js';
import { PaymentNetwork, type Bill, type Parking, type Payments } from './payment-network.js';

/**
 * Pays bills with money that some funds front for reimbursable grants: as much is fronted as can be, as
 * long as every bill is paid. Where no amounts pay every bill, the network that leaves least unpaid.
 *
 * With the amounts fixed it is a flow; where that leaves a bill unpaid, its smallest cut is an inequality
 * between the amounts (Benders 1962), and amounts that keep all of these are tried next. They are
 * rounded down to whole cents, which a bill that is fronted leaves room for where a whole cent is short.
 */
export function payFronted(payments: Payments): PaymentNetwork {
  const plain = new PaymentNetwork(payments, []).settle();
  const most = mostParked(payments);
  if (most.length === 0) return plain;
  const exact = search(payments, most);
  if (exact.network?.isPaid()) return exact.network;
  const roomy = exact.broken ? undefined : search(withRoom(payments), most).parked;
  const rounded = roomy && new PaymentNetwork(payments, roomy).settle();
  if (rounded?.isPaid()) return rounded;
  return plain.isPaid() ? plain : leastUnpaid([plain, ...(exact.network ? [exact.network] : [])]);
}

/** Every year in which money may be fronted, with the most that it may be. */
function mostParked({ frontings, purses, bills }: Payments): Parking[] {
  return frontings.flatMap(({ grant, first, last, most, purse }, fronting) => {
    const years = new Map<number, number>();
    for (const bill of bills) {
      const { yearIndex } = bill;
      if (yearIndex < first || yearIndex > last || !bill.frontings.includes(fronting)) continue;
      years.set(yearIndex, (years.get(yearIndex) ?? 0) + mostMatched(grant, bill.amount));
    }
    const limit = Math.min(most, purses[purse]?.amount ?? 0);
    return [...years].map(([yearIndex, amount]) => ({
      fronting,
      yearIndex,
      amount: Math.min(limit, amount),
    }));
  });
}

/** A cent more on a bill for each amount that is rounded down on its account. */
function withRoom(payments: Payments): Payments {
  const room = ({ frontings, yearIndex }: Bill) =>
    frontings.filter((f) => {
      const { first = 0, last = -1 } = payments.frontings[f] ?? {};
      return yearIndex >= first && yearIndex <= last;
    }).length;
  return {
    ...payments,
    bills: payments.bills.map((bill) => ({ ...bill, amount: bill.amount + room(bill) })),
  };
}

interface Found {
  readonly parked: Parking[];
  readonly network?: PaymentNetwork;
  /** No amounts, not even parts of cents, pay every bill. */
  readonly broken: boolean;
}

function search(payments: Payments, most: readonly Parking[]): Found {
  const less = limits(payments, most);
  let best: PaymentNetwork | undefined;
  let parked: Parking[] = [];
  for (let tried = 0; tried < MOST_CUTS; tried++) {
    const point = less.find();
    if (!point) return { parked, ...(best ? { network: best } : {}), broken: true };
    parked = most.map((m, i) => ({ ...m, amount: m.amount - (point[i] ?? 0) }));
    const whole = parked.map((p) => ({ ...p, amount: Math.max(0, Math.floor(p.amount + NEAR)) }));
    const network = new PaymentNetwork(payments, whole).settle();
    if (network.isPaid()) return { parked: whole, network, broken: false };
    best = best ? leastUnpaid([best, network]) : network;
    const { weights, atLeast } = network.cut();
    const have = parked.reduce((sum, { amount }, i) => sum + amount * (weights[i] ?? 0), 0);
    if (have >= atLeast - NEAR) return { parked: whole, network: best, broken: false };
    const full = most.reduce((sum, { amount }, i) => sum + amount * (weights[i] ?? 0), 0);
    less.add(
      weights.map((w) => -w),
      atLeast - full,
    );
  }
  return { parked, ...(best ? { network: best } : {}), broken: false };
}

/** Whole cents that parts of a cent may be off by after many steps. */
const NEAR = 1e-4;
const MOST_CUTS = 500;

/** What is taken off the most: never all that there is, and each award and each grant in a year keep theirs. */
function limits({ frontings, bills }: Payments, most: readonly Parking[]): LeastPoint {
  const less = new LeastPoint(most.length);
  most.forEach(({ amount }, i) =>
    less.add(
      most.map((_, j) => (i === j ? -1 : 0)),
      -amount,
    ),
  );
  const atMost = (of: (p: Parking) => boolean, limit: number) => {
    const all = most.filter(of).reduce((sum, { amount }) => sum + amount, 0);
    if (all > limit)
      less.add(
        most.map((p) => (of(p) ? 1 : 0)),
        all - limit,
      );
  };
  const seen = new Set<string>();
  for (const { fronting, yearIndex } of most) {
    const by = frontings[fronting];
    if (!by) continue;
    const sameGrant = (p: Parking) => frontings[p.fronting]?.grant === by.grant;
    const award = `${by.grant.id} ${by.inflow}`;
    if (!seen.has(award))
      atMost((p) => sameGrant(p) && frontings[p.fronting]?.inflow === by.inflow, by.most);
    const year = `${by.grant.id} in ${yearIndex}`;
    if (!seen.has(year)) {
      const shares = bills
        .filter((b) => b.yearIndex === yearIndex)
        .filter((b) => b.frontings.some((f) => frontings[f]?.grant === by.grant))
        .reduce((sum, { amount }) => sum + mostMatched(by.grant, amount), 0);
      atMost((p) => sameGrant(p) && p.yearIndex === yearIndex, shares);
    }
    seen.add(award).add(year);
  }
  return less;
}

function leastUnpaid(networks: readonly PaymentNetwork[]): PaymentNetwork {
  const owed = (network: PaymentNetwork) =>
    network.missing().reduce((sum, { amount }) => sum + amount, 0);
  return networks.reduce((a, b) => (owed(b) < owed(a) ? b : a));
}
