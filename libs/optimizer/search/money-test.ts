import { payersOf } from '#rules/funds/sinks.js';
import { FlowNetwork } from '../allocate/max-flow.js';
import type { Tables } from './tables.js';

/** Tells whether costs by sink and year can be paid, with the network laid out once. */
export interface MoneyTest {
  /**
   * First year index with a cost that cannot be paid; `undefined` where all is paid.
   * `costs` holds cents at [sink x years + year].
   */
  shortYear(costs: Float64Array): number | undefined;
}

/** A cost of one sink and year, with the matching money that may flow into it. */
interface Due {
  readonly at: number;
  readonly year: number;
  readonly edge: number;
  readonly matched: readonly { readonly edge: number; readonly share: number }[];
}

/** A test by largest flow: start -> purse -> (match cap) -> sink of a year -> end, in whole cents. */
export function moneyTest(tables: Tables): MoneyTest {
  const { network, dues } = layOut(tables);
  return {
    shortYear(costs) {
      network.reset();
      for (const { at, edge, matched } of dues) {
        const cost = costs[at] ?? 0;
        network.widen(edge, cost);
        for (const m of matched) network.widen(m.edge, Math.floor(cost * m.share));
      }
      network.send(0, 1);
      let first: number | undefined;
      for (const { year, edge } of dues) {
        if (network.roomLeft(edge) > 0 && (first === undefined || year < first)) first = year;
      }
      return first;
    },
  };
}

function layOut({ years, purses, sinkKeys }: Tables): { network: FlowNetwork; dues: Due[] } {
  const sinks = sinkKeys.length * years;
  const purseNode = (i: number) => 2 + sinks + i;
  const matching = purses.filter((p) => p.fund.matchRatio !== undefined).length;
  const network = new FlowNetwork(2 + sinks + purses.length + matching * sinks);
  let spare = purseNode(purses.length);
  purses.forEach((p, i) => network.addEdge(0, purseNode(i), p.amount));
  const dues = sinkKeys.flatMap((key, k) => {
    const payers = payersOf(key);
    return Array.from({ length: years }, (_, year) => {
      const at = k * years + year;
      const matched: { edge: number; share: number }[] = [];
      const edge = network.addEdge(2 + at, 1, 0);
      for (const i of payers) {
        const purse = purses[i];
        if (!purse || year < purse.first || year > purse.last) continue;
        const ratio = purse.fund.matchRatio;
        const from = ratio === undefined ? purseNode(i) : spare++;
        if (ratio !== undefined) {
          matched.push({
            edge: network.addEdge(purseNode(i), from, 0),
            share: ratio / (1 + ratio),
          });
        }
        network.addEdge(from, 2 + at, purse.amount);
      }
      return { at, year, edge, matched };
    });
  });
  return { network, dues };
}
