import { yearAt } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { mostMatched } from '#estimating/cost/matching.js';
import type { Term } from '#mip/model.js';
import type { ModelDraft } from '#mip/model-draft.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import { frontingsIn, type Payers, type SinkKey } from './sinks.js';

/** Rows are written in hundreds of dollars, so that the solver's tolerance is far below a cent. */
export const UNIT = 100_00;

/** What a purse spends on one sink in one year. */
export interface Spent {
  readonly year: number;
  readonly term: Term;
}

interface Fronted extends Spent {
  readonly fronting: number;
}

/**
 * Money that funds front for reimbursable grants: it pays a bill now and is back in its purse after the
 * lag, so such a purse keeps a balance of each year.
 *
 *     held[p, y]  <=  held[p, y - 1] + front[p, y - lag] - front[p, y] - spend[p, y]    for each purse p that fronts, year y
 *     sum of front over purses  <=  whole cents of its share of the bill               for each grant and bill
 *     sum of front over purses, bills, and years  <=  amount of the award              for each award
 */
export class FrontedMoney {
  private readonly all: Fronted[] = [];

  constructor(
    private readonly draft: ModelDraft,
    private readonly campus: Campus,
    private readonly payers: Payers,
  ) {}

  /** Columns and shares of one sink in one year; returns what pays it. `bills` in cents. */
  addSink(sink: {
    readonly key: SinkKey;
    readonly year: number;
    readonly label: string;
    readonly bills: readonly Term[];
  }): Term[] {
    const open = frontingsIn(sink.key).flatMap((index) => {
      const fronting = this.payers.frontings[index];
      if (!fronting || sink.year < fronting.first || sink.year > fronting.last) return [];
      return [{ index, fronting }];
    });
    const made = open.map(({ index, fronting: { grant, inflow, purse, most } }) => {
      const front = this.payers.purses[purse];
      const by = `${front?.fund.id} ${front?.inflow}`;
      const variable = this.draft.addVariable({
        label: `front ${by} ${grant.id} ${inflow} ${sink.label} ${sink.key}`,
        kind: 'continuous',
        upper: Math.min(most, front?.amount ?? 0) / UNIT,
      });
      const term = { variable, coefficient: 1 };
      this.all.push({ fronting: index, year: sink.year, term });
      return { grant, term };
    });
    for (const grant of new Set(made.map((m) => m.grant))) {
      this.draft.addRow({
        label: `reimburse ${grant.id} ${sink.label} ${sink.key}`,
        terms: [
          ...made.filter((m) => m.grant === grant).map(({ term }) => term),
          ...sink.bills.map((t) => ({
            ...t,
            coefficient: -mostMatched(grant, t.coefficient) / UNIT,
          })),
        ],
        atMost: 0,
      });
    }
    return made.map(({ term }) => term);
  }

  /** Balances of a purse, where it fronts; false where it does not. */
  addPurseRows(label: string, index: number, spent: readonly Spent[]): boolean {
    const purse = this.payers.purses[index];
    const fronted = this.all.filter(
      ({ fronting }) => this.payers.frontings[fronting]?.purse === index,
    );
    if (!purse || fronted.length === 0) return false;
    const back = fronted.map(({ fronting, year, term }) => ({
      year: year + (this.payers.frontings[fronting]?.lag ?? 0),
      term,
    }));
    let before: Term[] = [];
    for (let year = purse.first; year <= purse.last; year++) {
      const of = (list: readonly Spent[]) =>
        list.flatMap((entry) => (entry.year === year ? [entry.term] : []));
      const fiscal = fiscalYearLabel(yearAt(this.campus.calendar, year));
      const variable = this.draft.addVariable({
        label: `held ${label} ${fiscal}`,
        kind: 'continuous',
        upper: purse.amount / UNIT,
      });
      this.draft.addRow({
        label: `${label} ${fiscal}`,
        terms: [
          { variable, coefficient: 1 },
          ...of(spent),
          ...of(fronted),
          ...[...before, ...of(back)].map((term) => ({ ...term, coefficient: -1 })),
        ],
        atMost: year === purse.first ? purse.amount / UNIT : 0,
      });
      before = [{ variable, coefficient: 1 }];
    }
    return true;
  }

  addAwardRows(): void {
    const awards = new Map<string, { terms: Term[]; most: number }>();
    for (const { fronting, term } of this.all) {
      const of = this.payers.frontings[fronting];
      if (!of) continue;
      const label = `award ${of.grant.id} ${of.inflow}`;
      const award = awards.get(label) ?? { terms: [], most: of.most };
      award.terms.push(term);
      awards.set(label, award);
    }
    for (const [label, { terms, most }] of awards)
      this.draft.addRow({ label, terms, atMost: most / UNIT });
  }
}
