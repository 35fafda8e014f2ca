import type { Campus } from '#domain/campus.js';
import type { EscalationKind } from '#domain/money.js';
import { coefficientNode } from '#estimating/defaults/coefficients.js';
import { overridesAt } from '#estimating/defaults/overrides-at.js';
import type { DefaultKey } from '#estimating/defaults/defaults.data.js';

/** The numbers that futures are drawn with. Shares from 0 to 1. */
export interface Odds {
  readonly pledgedArrives: number;
  readonly hopedForArrives: number;
  readonly workDayLost: number;
  /** Standard deviation of the show rate of one work day. */
  readonly showSpread: number;
  readonly staffLeave: number;
  /** Seasons for which a place stays empty. */
  readonly vacancySeasons: number;
  readonly compostSpread: number;
  /** Standard deviation of a year's shock to price growth. */
  readonly priceShock: Readonly<Record<EscalationKind, number>>;
  /** Part of a year's shock that the next year keeps. */
  readonly shockCarried: number;
  /** Likely cost of a build, less and more. */
  readonly costLow: number;
  readonly costHigh: number;
  /** Chance that works which have not begun slip by one year more. */
  readonly worksSlip: number;
  /** Years of age that a year without any care takes back. */
  readonly weedSetBack: number;
}

/** One number with where it is from, for a reader. */
export interface OddsSource {
  readonly key: string;
  readonly value: number;
  readonly unit: string;
  readonly source: string;
}

const KEYS = {
  pledgedArrives: 'futures.pledged-arrives',
  hopedForArrives: 'futures.hoped-for-arrives',
  workDayLost: 'futures.work-day-lost',
  showSpread: 'volunteers.show-spread',
  staffLeave: 'futures.staff-leave',
  vacancySeasons: 'futures.vacancy-seasons',
  compostSpread: 'futures.compost-spread',
  construction: 'futures.construction-price-shock',
  wages: 'futures.wages-price-shock',
  supplies: 'futures.supplies-price-shock',
  shockCarried: 'futures.price-shock-carried',
  costLow: 'cost.class-5-low',
  costHigh: 'cost.class-5-high',
  worksSlip: 'futures.works-slip',
  weedSetBack: 'care.weed-set-back',
} as const satisfies Record<string, DefaultKey>;

/** The numbers of a campus: its own measured values, else the defaults. */
export function oddsOf(campus: Campus): { odds: Odds; sources: OddsSource[] } {
  const overrides = overridesAt(campus);
  const nodes = new Map(
    Object.entries(KEYS).map(([name, key]) => [name, coefficientNode(key, overrides)]),
  );
  const value = (name: keyof typeof KEYS) => nodes.get(name)?.value ?? NaN;
  return {
    odds: {
      pledgedArrives: value('pledgedArrives'),
      hopedForArrives: value('hopedForArrives'),
      workDayLost: value('workDayLost'),
      showSpread: value('showSpread'),
      staffLeave: value('staffLeave'),
      vacancySeasons: value('vacancySeasons'),
      compostSpread: value('compostSpread'),
      priceShock: {
        construction: value('construction'),
        wages: value('wages'),
        supplies: value('supplies'),
      },
      shockCarried: value('shockCarried'),
      costLow: value('costLow'),
      costHigh: value('costHigh'),
      worksSlip: value('worksSlip'),
      weedSetBack: value('weedSetBack'),
    },
    sources: [...nodes.values()].map(({ name, value: v, unit, source }) => ({
      ...{ key: name, value: v ?? NaN, unit, source },
    })),
  };
}

/** Odds under which every future is the plan itself: nothing varies but works that may never come. */
export const NO_CHANCE: Odds = {
  pledgedArrives: 1,
  hopedForArrives: 1,
  workDayLost: 0,
  showSpread: 0,
  staffLeave: 0,
  vacancySeasons: 0,
  compostSpread: 0,
  priceShock: { construction: 0, wages: 0, supplies: 0 },
  shockCarried: 0,
  costLow: 0,
  costHigh: 0,
  worksSlip: 0,
  weedSetBack: 1,
};
