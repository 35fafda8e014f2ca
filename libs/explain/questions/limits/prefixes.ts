import { yearAt } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { Decisions } from '#domain/plan.js';
import type { ResolveAnswer } from '#optimizer/resolve/order.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import type { Asked } from '../common/asked.js';
import { decisionsWithin, prefixWithPromise, type YearlyPromise } from './prefix.js';

/** Rounds of search for a plan of a prefix, where nobody waits and where time is limited. */
const ROUNDS = 12;
const TIMED_ROUNDS = 50_000;

/** Share of the time left for one prefix, and seconds at the most. */
const TRY_SHARE = 0.2;
const MOST_SECONDS = 4;

/** Share of the time left for a prefix that was not decided before. */
const AGAIN_SHARE = 0.45;

export type Ending = ResolveAnswer['ending'];

export interface TriedPrefix {
  /** Last year of the prefix. */
  readonly through: string;
  readonly ending: Ending;
}

/**
 * The prefixes of one campus, each tried at most once, and once more where it was not decided. A plan found
 * for a prefix is where the next one begins, since neighbors differ little.
 */
export class Prefixes {
  private readonly endings = new Map<number, Ending>();
  private readonly plans = new Map<number, Decisions>();

  constructor(
    private readonly asked: Asked,
    private readonly of: {
      readonly campus: Campus;
      readonly promise: YearlyPromise;
      /** Decisions that may carry it through so many years. */
      readonly hints?: readonly { readonly years: number; readonly decisions: Decisions }[];
    },
  ) {
    for (const { years, decisions } of of.hints ?? []) this.plans.set(years, decisions);
  }

  /** How a prefix ends, tried now where it was not before. */
  async ending(years: number): Promise<Ending> {
    const known = this.endings.get(years);
    if (known) return known;
    const left = this.asked.resolver.secondsLeft();
    return this.tryOne(years, Math.min(MOST_SECONDS, Math.max(0.5, left * TRY_SHARE)));
  }

  /** Tries a prefix that was not decided with more time. */
  async again(years: number): Promise<Ending> {
    const known = this.endings.get(years);
    if (known === 'found' || known === 'impossible') return known;
    return this.tryOne(years, Math.max(0.5, this.asked.resolver.secondsLeft() * AGAIN_SHARE));
  }

  /** The shortest prefix above `years` that is proven to have no plan; `null`: none is. */
  impossibleAbove(years: number): number | null {
    const longer = [...this.endings].flatMap(([y, e]) =>
      e === 'impossible' && y > years ? [y] : [],
    );
    return longer.length > 0 ? Math.min(...longer) : null;
  }

  tried(): TriedPrefix[] {
    const { calendar } = this.of.campus;
    return [...this.endings]
      .sort(([a], [b]) => a - b)
      .map(([years, ending]) => ({
        through: fiscalYearLabel(yearAt(calendar, years - 1)),
        ending,
      }));
  }

  private async tryOne(years: number, seconds: number): Promise<Ending> {
    const { asked } = this;
    const campus = prefixWithPromise(this.of.campus, this.of.promise, years);
    const timed = Number.isFinite(asked.resolver.secondsLeft());
    const [answer] = await asked.resolver.resolve([
      {
        campus,
        start: decisionsWithin(campus, this.startFor(years), years),
        seed: asked.seed,
        effort: { kind: 'rounds', rounds: timed ? TIMED_ROUNDS : ROUNDS },
        ...(timed ? { seconds } : {}),
        wish: 'exists',
      },
    ]);
    const ending = answer?.ending ?? 'not-found';
    this.endings.set(years, ending);
    if (answer?.plan) this.plans.set(years, answer.plan.decisions);
    return ending;
  }

  /** What is known of the nearest prefix; without any, the plan that is asked about. */
  private startFor(years: number): Decisions {
    const [nearest] = [...this.plans].sort(([a], [b]) => Math.abs(a - years) - Math.abs(b - years));
    return nearest?.[1] ?? this.asked.plan.decisions;
  }
}
