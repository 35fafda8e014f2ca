import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { counted, dollars, listInWords, wholeNumber } from '../../format/numbers.js';
import { strings } from '../../strings.data.js';

const words = strings.changes;

/** One difference between two plans; what is the same in both is not told. */
export interface PlanChange {
  readonly what: string;
  readonly before: string;
  readonly after: string;
}

/**
 * What gives when one plan takes the place of another: promises, limits, money and people first, then
 * the sites, of which one change can move most.
 */
export function planChanges(before: PlanOverview, after: PlanOverview): readonly PlanChange[] {
  return [
    ...differing(promises(before), promises(after), words.noSuch),
    ...differing(limits(before), limits(after), words.noSuch),
    ...differing(sums(before), sums(after), words.noSuch),
    ...differing(asksAndLapses(before), asksAndLapses(after), words.none),
    ...differing(siteYears(before), siteYears(after), words.notBuilt),
  ];
}

type Facts = ReadonlyMap<string, string>;

function differing(before: Facts, after: Facts, absent: string): readonly PlanChange[] {
  const names = [...new Set([...before.keys(), ...after.keys()])];
  return names.flatMap((what) => {
    const change = {
      what,
      before: before.get(what) ?? absent,
      after: after.get(what) ?? absent,
    };
    return change.before === change.after ? [] : [change];
  });
}

function siteYears({ years }: PlanOverview): Facts {
  return new Map(
    years.flatMap(({ year, sites }) =>
      sites.map(
        ({ site, name, buildType }) =>
          [`${site} ${name}`, words.preparedAs(year, buildType)] as const,
      ),
    ),
  );
}

function promises(overview: PlanOverview): Facts {
  return new Map(
    overview.promises.map(({ name, status, missedYears }) => [
      words.promise(name),
      missedYears.length === 0 ? status : words.missedIn(status, listInWords(missedYears)),
    ]),
  );
}

function limits(overview: PlanOverview): Facts {
  return new Map(
    overview.limits.map(({ resource, label, year }) => [
      words.limit(resource),
      label ?? year ?? strings.limits.notShort,
    ]),
  );
}

function sums({ totals, seasons }: PlanOverview): Facts {
  const unserved = seasons.reduce((sum, season) => sum + season.unserved, 0);
  return new Map([
    [words.built, counted(totals.sitesBuilt, 'site', 'sites')],
    [words.capital, dollars(totals.capitalNominalDollars)],
    [words.undone, counted(Math.round(unserved), 'hour', 'hours')],
  ]);
}

/** Each position to ask for by when it starts, and each sum that lapses by its year. */
function asksAndLapses({ hires, lapses }: PlanOverview): Facts {
  return new Map([
    ...hires.map(
      ({ count, position, startsIn, askBy }) =>
        [words.hire(position, startsIn), words.asked(wholeNumber(count), askBy)] as const,
    ),
    ...lapses.map(
      ({ name, year, dollars: value }) => [words.lapse(name, year), dollars(value)] as const,
    ),
  ]);
}
