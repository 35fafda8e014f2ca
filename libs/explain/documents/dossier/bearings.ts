import type { Campus } from '#domain/campus.js';
import type { CandidateSite } from '#domain/site.js';
import { dayInWords } from '#units/dates-in-words.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import { counted, listInWords } from '#units/in-words.js';
import { siteName } from '../../overview/site-words.js';
import type { SiteDossier } from './site-dossier.js';

/** What bears on a site from outside it: works, order, promises, windows and remarks. */
export function bearingsOf(campus: Campus, site: CandidateSite): SiteDossier['bearings'] {
  return [
    ...works(campus, site),
    ...order(campus, site),
    ...promises(campus, site),
    ...windows(site),
    ...site.notes.map((sentence) => ({ sentence, source: 'site record' })),
  ];
}

function works({ construction }: Campus, { id }: CandidateSite): SiteDossier['bearings'] {
  return construction
    .filter(({ sites }) => sites.includes(id))
    .map(({ name, from, to, certaintyPercent, source }) => ({
      sentence: `${name}, ${from === to ? `in ${fiscalYearLabel(from)}` : `${fiscalYearLabel(from)} to ${fiscalYearLabel(to)}`}, ${certaintyPercent}% certain.`,
      source,
    }));
}

function order(campus: Campus, { id }: CandidateSite): SiteDossier['bearings'] {
  const before = campus.precedence
    .filter((rule) => rule.before === id || rule.after === id)
    .map(({ before: first, after, yearsApart, reason }) => ({
      sentence: `${siteName(campus, first)} comes at least ${counted(yearsApart, 'year')} before ${siteName(campus, after)}.`,
      source: reason,
    }));
  const rivals = campus.exclusiveGroups
    .filter(({ sites }) => sites.includes(id))
    .map(({ sites, reason }) => ({
      sentence: `At most one of these is ever built: ${listInWords(sites.map((one) => siteName(campus, one)))}.`,
      source: reason,
    }));
  return [...before, ...rivals];
}

function promises({ commitments }: Campus, { id }: CandidateSite): SiteDossier['bearings'] {
  return commitments
    .filter(({ test }) => test.kind === 'named-site' && test.site === id)
    .map(({ name, strength, saidBy, saidTo, document, date }) => ({
      sentence: `Promise (${strength}): ${name}. Said by ${saidBy} to ${saidTo}.`,
      source: `${document}, ${dayInWords(date)}`,
    }));
}

function windows({ earliest, latest }: CandidateSite): SiteDossier['bearings'] {
  const source = 'site record';
  return [
    ...(earliest === undefined
      ? []
      : [{ sentence: `Not to be prepared before ${fiscalYearLabel(earliest)}.`, source }]),
    ...(latest === undefined
      ? []
      : [{ sentence: `Not to be prepared after ${fiscalYearLabel(latest)}.`, source }]),
  ];
}
