import type { Breach } from '#domain/breach.js';
import type { Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import { fiscalYear, fiscalYearLabel } from '#units/fiscal-year.js';
import type { Check } from '../check.js';
import { frozenHires, frozenPart, frozenThrough, publishedPlacement } from './frozen.js';

/** In the frozen years nothing is decided otherwise than the published plan did: sites and hires. */
export const checkStability: Check = (campus, plan) => {
  if (campus.published?.frozenThrough === undefined) return [];
  return [...siteBreaches(campus, plan), ...hireBreaches(campus, plan)];
};

function breach(record: string, message: string): Breach {
  return { rule: 'stability', record, message };
}

function frozenYears(campus: Campus): string {
  return `years through ${fiscalYearLabel(fiscalYear(frozenThrough(campus)))} are frozen`;
}

function siteBreaches(campus: Campus, plan: Plan): Breach[] {
  const placed = new Map(plan.decisions.placements.map((p) => [p.site, p]));
  const sites = new Set([
    ...placed.keys(),
    ...(campus.published?.placements.map((p) => p.site) ?? []),
  ]);
  return [...sites].flatMap((site) => {
    const now = placed.get(site);
    const before = publishedPlacement(campus, site);
    if (frozenPart(campus, now) === frozenPart(campus, before)) return [];
    const was = before ? `as ${before.buildType} in ${fiscalYearLabel(before.year)}` : 'not at all';
    const is = now ? `as ${now.buildType} in ${fiscalYearLabel(now.year)}` : 'not at all';
    return [
      breach(site, `${site} was published ${was} and is planned ${is}; ${frozenYears(campus)}`),
    ];
  });
}

function hireBreaches(campus: Campus, plan: Plan): Breach[] {
  const counts = (hires: Plan['decisions']['hires']) => {
    const sums = new Map<string, number>();
    for (const { position, year, count } of hires) {
      if (year > frozenThrough(campus)) continue;
      const key = `${position} in ${fiscalYearLabel(year)}`;
      sums.set(key, (sums.get(key) ?? 0) + count);
    }
    return sums;
  };
  const [now, before] = [counts(plan.decisions.hires), counts(frozenHires(campus))];
  return [...new Set([...now.keys(), ...before.keys()])].flatMap((key) => {
    const [is, was] = [now.get(key) ?? 0, before.get(key) ?? 0];
    if (is === was) return [];
    return [
      breach(key, `${was} of ${key} were published and ${is} are planned; ${frozenYears(campus)}`),
    ];
  });
}
