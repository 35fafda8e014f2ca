import { candidate } from '#domain/campus.js';
import type { Placement } from '#domain/plan.js';
import { measured } from '#estimating/benefit-points/benefit-points.js';
import { buildType } from '#domain/campus.js';
import {
  dollarsInWords,
  hoursInWords,
  ordinal,
  uncapitalized,
  wholeInWords,
} from '#units/in-words.js';
import type { Ground } from '../ground.js';
import type { Figure } from '../plan-overview.js';
import { careHoursAt } from '../labor/busy-season.js';
import { costBandOf } from '../years/cost-band.js';
import { points, rankOf, speaksFor, type Rank } from './rivals.js';
import type { Weighed } from './weighed.js';

/** One thing in which candidates of a year are compared. `undefined`: not known of the site. */
interface Comparison {
  readonly better: 'more' | 'less';
  readonly unit: string;
  readonly source: string;
  /** What the highest place is called: `most`, `fewest`, `least`. */
  readonly superlative: string;
  valueOf(placement: Placement): number | undefined;
  sentence(value: number, placement: Placement): string;
  /** Numbers that its sentence tells beside the value. */
  figures?(placement: Placement): Figure[];
}

/**
 * The site beside all others that could be prepared in the year, in what can be counted: `of 16` is
 * of that many candidates, itself among them, each as the plan would build it.
 */
export function comparisonReasons(
  ground: Ground,
  placement: Placement,
  rivals: readonly Placement[],
): Weighed[] {
  const others = rivals.filter(({ site }) => site !== placement.site);
  if (others.length === 0) return [];
  return comparisons(ground).flatMap((comparison) => {
    const value = comparison.valueOf(placement);
    if (value === undefined) return [];
    const values = others.flatMap((other) => comparison.valueOf(other) ?? []);
    if (values.length === 0) return [];
    const rank = rankOf(value, values, comparison.better);
    return [weighed(comparison, { value, rank, placement })];
  });
}

function weighed(
  comparison: Comparison,
  of: { readonly value: number; readonly rank: Rank; readonly placement: Placement },
): Weighed {
  const { value, rank, placement } = of;
  const { superlative, unit, source } = comparison;
  const middle = (rank.of + 1) / 2;
  const { near, words } = placeOf(rank, superlative);
  const stands = `${words} of ${rank.of}`;
  return {
    side: speaksFor(rank) ? 'for' : 'against',
    rank: 'comparison',
    size: rank.of > 1 ? Math.abs(rank.place - middle) / (middle - 1 || 1) : 0,
    reason: {
      sentence: `${comparison.sentence(value, placement)}: ${stands}.`,
      value,
      unit,
      figures: [
        ...(comparison.figures?.(placement) ?? []),
        { what: words, value: near, unit: 'place' },
        { what: 'compared', value: rank.of, unit: 'candidates' },
      ],
      source,
    },
  };
}

interface Place {
  readonly near: number;
  readonly words: string;
}

/** Counted from the nearer end: `2nd highest` rather than `15th lowest` of 16. */
function placeOf({ place, of }: Rank, superlative: string): Place {
  const fromEnd = of - place + 1;
  const [near, word] =
    place <= fromEnd ? [place, superlative] : [fromEnd, OPPOSITES[superlative] ?? superlative];
  return { near, words: near === 1 ? word : `${ordinal(near)} ${word}` };
}

const OPPOSITES: Readonly<Record<string, string>> = {
  most: 'fewest',
  fewest: 'most',
  lowest: 'highest',
  highest: 'lowest',
};

function comparisons(ground: Ground): Comparison[] {
  const { campus, charges, busy } = ground;
  return [
    {
      better: 'more',
      unit: 'points a year',
      superlative: 'highest',
      source: 'committee weights of benefit',
      valueOf: ({ site, buildType: type }) => points(ground, site, type),
      sentence: (value, placement) =>
        `Benefit is ${wholeInWords(value)} points a year${mainlyInWords(mainlyFor(ground, placement))}`,
      figures: (placement) => mainlyFor(ground, placement),
    },
    {
      better: 'more',
      unit: 'walkers a day',
      superlative: 'most',
      source: 'walker counts',
      valueOf: ({ site }) => {
        const { walkersPerDay } = candidate(campus, site).facts;
        return walkersPerDay.known ? walkersPerDay.value : undefined;
      },
      sentence: (value) => `About ${wholeInWords(value)} people walk past on a day`,
    },
    {
      better: 'less',
      unit: 'hours',
      superlative: 'fewest',
      source: 'care coefficients by age',
      valueOf: (placement) => careHoursAt(charges, placement, { age: 2, order: busy.order }),
      sentence: (value) => `Care takes about ${hoursInWords(value)} in its second ${busy.id}`,
    },
    {
      better: 'less',
      unit: 'dollars',
      superlative: 'lowest',
      source: 'class 5 estimates',
      valueOf: (placement) => costBandOf(ground, placement).likely,
      sentence: (value) => `Building is likely to cost ${dollarsInWords(value)}`,
    },
  ];
}

/** The two criteria that give most of the points, where they give any. */
function mainlyFor({ campus }: Ground, { site, buildType: type }: Placement): Points[] {
  return campus.benefit.criteria
    .map((c) => ({
      what: uncapitalized(c.name),
      value:
        (c.weight *
          measured(campus, { site: candidate(campus, site), type: buildType(campus, type) }, c)) /
        c.reference,
      unit: 'points a year',
    }))
    .filter(({ value }) => value >= 0.5)
    .sort((a, b) => b.value - a.value)
    .slice(0, 2);
}

type Points = Figure & { readonly value: number };

function mainlyInWords(parts: readonly Points[]): string {
  if (parts.length === 0) return '';
  return ` (${parts.map((p) => `${p.what} ${wholeInWords(p.value)}`).join(', ')})`;
}
