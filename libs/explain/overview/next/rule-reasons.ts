import type { Placement } from '#domain/plan.js';
import type { ConstructionConflict } from '#domain/site.js';
import { strandedOf } from '#estimating/site-charges/stranded.js';
import { centsToDollars } from '#units/cents.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import { counted, dollarsInWords, listInWords, percentInWords } from '#units/in-words.js';
import type { Ground } from '../ground.js';
import type { UnknownRow } from '../plan-overview.js';
import { siteName } from '../site-words.js';
import type { Weighed } from './weighed.js';

/** What building this site opens, rules out or puts at risk. */
export function ruleReasons(
  ground: Ground,
  placement: Placement,
  open: readonly UnknownRow[],
): Weighed[] {
  return [
    ...opened(ground, placement),
    ...ruledOut(ground, placement),
    ...worksAhead(ground, placement),
    ...unsettled(open),
  ];
}

const rule = (side: Weighed['side'], size: number, reason: Weighed['reason']): Weighed => ({
  side,
  rank: 'rule',
  size,
  reason,
});

function opened({ campus }: Ground, { site }: Placement): Weighed[] {
  return campus.precedence
    .filter(({ before }) => before === site)
    .map(({ after, reason }) =>
      rule('for', 1, {
        sentence: `Opens the way for ${siteName(campus, after)}. ${reason}`,
        value: 1,
        unit: 'site',
        figures: [],
        source: 'order of sites',
      }),
    );
}

function ruledOut({ campus }: Ground, { site }: Placement): Weighed[] {
  return campus.exclusiveGroups
    .filter(({ sites }) => sites.includes(site))
    .map(({ sites, reason }) => {
      const others = sites.filter((id) => id !== site).map((id) => siteName(campus, id));
      return rule('against', others.length, {
        sentence: `Rules out ${listInWords(others)} for good. ${reason}`,
        value: others.length,
        unit: 'sites',
        figures: [],
        source: 'sites of which one may be built',
      });
    });
}

/** Works that may take the ground before it has paid back. */
function worksAhead({ campus, charges }: Ground, placement: Placement): Weighed[] {
  const losses = new Map<ConstructionConflict, number>();
  for (const { works, amount } of strandedOf(campus, charges.parts(placement))) {
    losses.set(works, (losses.get(works) ?? 0) + centsToDollars(amount));
  }
  const dollarsOf = fiscalYearLabel(campus.calendar.priceYear);
  return [...losses].map(([works, loss]) => {
    const sure = percentInWords(works.certaintyPercent / 100);
    return rule('against', loss, {
      sentence: `${works.name} may take the ground from ${fiscalYearLabel(works.from)} on (${sure} certain): an expected loss of ${dollarsInWords(loss)} of its capital, in ${dollarsOf} dollars.`,
      value: loss,
      unit: 'dollars',
      figures: [
        { what: 'works from', value: fiscalYearLabel(works.from), unit: 'label' },
        { what: 'certain', value: works.certaintyPercent / 100, unit: 'share' },
        { what: 'dollars of', value: dollarsOf, unit: 'label' },
      ],
      source: works.source,
    });
  });
}

function unsettled(open: readonly UnknownRow[]): Weighed[] {
  if (open.length === 0) return [];
  return [
    rule('against', 0, {
      sentence: `${counted(open.length, 'question is', 'questions are')} still open, listed with who can settle ${open.length === 1 ? 'it' : 'them'}.`,
      value: open.length,
      unit: 'open questions',
      figures: [],
      source: 'gates and facts of the site',
    }),
  ];
}
