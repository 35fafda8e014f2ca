import { monthInWords } from '#units/dates-in-words.js';
import {
  counted,
  dollarsInWords,
  hoursInWords,
  ordinal,
  percentInWords,
  wholeInWords,
} from '#units/in-words.js';
import {
  moreInWords,
  quantileInWords,
  quantilesInWords,
  shareInWords,
  type SampledQuantile,
  type SampledShare,
} from '#units/sampled-in-words.js';

type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };
type Row = Readonly<Record<string, Json>>;

/** A number of a text as it stands there: `$12,000`, `FY28`, `3%`, `158 h`, `2nd`, `1,200`. */
const AMOUNT = String.raw`(?:\d{1,3}(?:,\d{3})+|\d+)(?:\.\d+)?`;
const NUMBER = new RegExp(
  [
    String.raw`less than (?:\$100|1 hour|0\.1%|1 cubic yard)`,
    String.raw`FY\d\d\b`,
    String.raw`\$${AMOUNT}`,
    String.raw`(?:(?:over|under) )?${AMOUNT}%`,
    String.raw`${AMOUNT}(?: (?:hours?|h)\b|(?:st|nd|rd|th)\b)?`,
  ].join('|'),
  'g',
);

/** Numbers that are part of a name: the class of a cost estimate. */
const NAMES = /\bclass 5\b/g;

/** A whole label of a year, a season or a month, which a sentence may repeat. */
const LABEL =
  /^(?:FY\d{2}|FY\d{4}|(?:spring|summer|fall|winter) \d{4}(?: \((?:opens )?FY\d\d\))?|[A-Z][a-z]+ \d{4}|\d{4}-\d\d-\d\d)$/;

/** Numbers of a sentence that are in none of its data: the sentence, and the number. */
export type Unsaid = readonly [sentence: string, number: string];

/**
 * Numbers of the printed text of an answer, and of each sentence in its JSON, for which the JSON has no
 * number. What the campus file says itself is no number of the answer. A sentence of a row is held
 * against that row alone, so that a number is not found by chance elsewhere; one of the whole answer,
 * and the printed text, against all of it.
 */
export function unsaidNumbers(
  answer: unknown,
  printed: readonly string[],
  file: unknown,
): Unsaid[] {
  const quoted = [...texts(file as Json), ...citedIn(answer as Json)];
  const own = quoted.sort((a, b) => b.length - a.length);
  const all = formsOf(answer as Json);
  const told = [
    ...sentencesOf(answer as Json, null, 0),
    ...printed.map((text) => ({ text, forms: all })),
  ];
  const missing = told.flatMap(({ text, forms }) =>
    numbersOf(without(text, own))
      .filter((number) => !(forms ?? all).has(number))
      .map((number): Unsaid => [text, number]),
  );
  return [...new Map(missing.map((m) => [m.join('|'), m])).values()];
}

export function numbersOf(text: string): string[] {
  return (text.match(NUMBER) ?? []).map((n) => n.replace(/ (?:hours?|h)$/, ' hours'));
}

function without(text: string, own: readonly string[]): string {
  return own.reduce((rest, part) => rest.split(part).join('·'), text).replace(NAMES, '·');
}

/** Every text of a campus file that holds a digit, as a sentence may repeat it. */
function texts(value: Json): string[] {
  if (typeof value === 'string') {
    return /\d/.test(value) && !LABEL.test(value) ? [value, value.replace(/\.$/, '')] : [];
  }
  if (value === null || typeof value !== 'object') return [];
  return [...new Set(Object.values(value).flatMap(texts))];
}

/** Ids, and where a number is from: they name something and tell no amount. */
const CITING = new Set(['id', 'key', 'source', 'site']);

function citedIn(value: Json, key = ''): string[] {
  if (typeof value === 'string') return CITING.has(key) && /\d/.test(value) ? [value] : [];
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([name, part]) =>
    citedIn(part, Array.isArray(value) ? key : name),
  );
}

interface Told {
  readonly text: string;
  /** `null`: those of the whole answer. */
  readonly forms: ReadonlySet<string> | null;
}

function sentencesOf(value: Json, row: ReadonlySet<string> | null, depth: number): Told[] {
  if (typeof value === 'string') return LABEL.test(value) ? [] : [{ text: value, forms: row }];
  if (value === null || typeof value !== 'object') return [];
  if (Array.isArray(value)) return value.flatMap((part: Json) => sentencesOf(part, row, depth));
  const own = depth === 0 ? null : formsOf(value);
  return Object.values(value as Row).flatMap((part) => sentencesOf(part, own, depth + 1));
}

/** Every way in which the numbers of a value are said by the formatters of the project. */
export function formsOf(value: Json, key = '', unit = ''): Set<string> {
  const forms = new Set<string>();
  collect(value, { key, unit }, forms);
  return forms;
}

interface Place {
  readonly key: string;
  readonly unit: string;
}

function collect(value: Json, place: Place, forms: Set<string>): void {
  if (typeof value === 'number') for (const form of waysToSay(value, place)) forms.add(form);
  else if (typeof value === 'string') labelForms(value).forEach((form) => forms.add(form));
  else if (Array.isArray(value)) {
    forms.add(wholeInWords(value.length));
    for (const part of value as Json[]) collect(part, place, forms);
  } else if (value !== null && typeof value === 'object') collectRow(value as Row, place, forms);
}

/** Units of rows that are named by what they hold. */
const UNITS: Readonly<Record<string, string>> = { cost: 'dollars', hours: 'hours' };

function collectRow(row: Row, { key }: Place, forms: Set<string>): void {
  for (const form of sampledForms(row)) numbersOf(form).forEach((number) => forms.add(number));
  const unit =
    typeof row['unit'] === 'string'
      ? row['unit']
      : typeof row['measure'] === 'string'
        ? row['measure']
        : (UNITS[key] ?? '');
  for (const [name, part] of Object.entries(row)) collect(part, { key: name, unit }, forms);
}

function labelForms(text: string): string[] {
  if (!LABEL.test(text)) return [];
  const month = /^\d{4}-\d\d-\d\d$/.test(text) ? [monthInWords(text)] : [];
  return [text, ...month].flatMap((label) => [...numbersOf(label), label.replace(/^FY20/, 'FY')]);
}

/** A number in its unit alone: dollars are never found among hours, nor hours among counts. */
function waysToSay(value: number, { key, unit }: Place): string[] {
  const size = Math.abs(value);
  if (/dollars/i.test(unit) || /dollars/i.test(key))
    return [dollarsInWords(size), `$${wholeInWords(size)}`];
  if (unit === 'hundredths of an hour') return hours(size / 100);
  if (/hours$/i.test(unit) || /hours/i.test(key)) return hours(size);
  if (unit === 'share' || (unit === '' && /share|gap/i.test(key)))
    return [percentInWords(size), String(size)];
  if (/year/i.test(key) && size > 1900) return [`FY${String(value).slice(2)}`];
  return [
    wholeInWords(size),
    String(size),
    ordinal(size),
    counted(Math.round(size / 100) * 100, 'x').slice(0, -2),
  ];
}

/** Without their unit too, where the sentence has just named it. */
function hours(size: number): string[] {
  return [
    wholeInWords(size),
    hoursInWords(size)
      .replace(/ hours?$/, ' hours')
      .replace('less than 1 hours', 'less than 1 hour'),
  ];
}

function sampledForms(row: Row): string[] {
  const has = (...keys: string[]) => keys.every((key) => typeof row[key] === 'number');
  if (has('share', 'low', 'high')) return [shareInWords(row as unknown as SampledShare)];
  if (has('value', 'low', 'high')) {
    const quantile = row as unknown as SampledQuantile;
    return [quantileInWords(quantile), moreInWords(quantile)].flatMap((q) => [
      q,
      `$${q}`,
      `${q} hours`,
    ]);
  }
  if (!['p10', 'p50', 'p90'].every((key) => key in row)) return [];
  const { p10, p50, p90 } = row as unknown as Record<string, SampledQuantile>;
  return p10 && p50 && p90 ? quantilesInWords([p10, p50, p90]) : [];
}
