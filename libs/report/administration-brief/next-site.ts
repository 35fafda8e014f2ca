import type { NextSite, NextYear, PlanOverview } from '#explain/overview/plan-overview.js';
import { firstInWords } from '#units/in-words.js';
import type { Block } from '../document/plan-document.js';
import { heading, paragraph } from '../document/text-blocks.js';
import { runOnCautionBox } from '../parts/caution-box.js';
import { factTable } from './facts.js';

/** The decision of the coming year: what, why, why not, what is open, what to mind. */
export function nextSiteBlocks({ next, cautions }: PlanOverview): readonly Block[] {
  if (next.sites.length === 0) {
    return [
      heading(1, `Next year: no site in ${next.year}`),
      paragraph('Use the year to settle what is not known; each answer can open a site.'),
    ];
  }
  return [
    heading(1, headingOf(next)),
    factTable(next),
    ...runOnCautionBox('at the site', cautions),
  ];
}

function headingOf({ sites }: NextYear): string {
  const [first] = sites;
  if (first && sites.length === 1) return `Next site: ${named(first)}`;
  return `Next sites: ${firstInWords(
    sites.map(({ site }) => site),
    6,
    'site',
  )}`;
}

function named({ site, name }: NextSite): string {
  return `${site} ${name}`;
}
