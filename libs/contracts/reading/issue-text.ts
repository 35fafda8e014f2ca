import type { ProblemText } from '#domain/problem.js';
import { counted } from '#units/in-words.js';
import type { Issue } from './issues.js';
import { isRecord } from './record-names.js';
import { nearest } from './nearest.js';

/** The general code and words of an issue; `issue-places.ts` knows better for some fields. */
export function issueText(issue: Issue, siblings: readonly string[]): [string, ProblemText] {
  switch (issue.kind) {
    case 'missing':
      return ['FIELD-MISSING', ['The field is missing.', missingRemedy(issue)]];
    case 'type':
      return ['FIELD-TYPE', [typeProblem(issue.value, issue.expected), typeRemedy(issue.value)]];
    case 'whole':
      return ['VALUE-NOT-WHOLE', [`${shown(issue.value)} is not whole.`, 'Give a whole number.']];
    case 'unknown-field':
      return ['FIELD-UNKNOWN', unknownField(issue.name, siblings)];
    case 'choice':
    case 'no-such-kind':
      return ['VALUE-NOT-ALLOWED', choiceText(issue)];
    case 'fiscal-year':
      return ['FISCAL-YEAR-UNCLEAR', fiscalYearText(issue.value)];
    case 'date':
      return ['DATE-MALFORMED', [`${shown(issue.value)} is not a date.`, 'Write "2027-09-15".']];
    case 'id':
    case 'key':
      return ['ID-MALFORMED', idText(issue.value)];
    default:
      return sizeText(issue);
  }
}

/** A value as it may stand in a sentence. */
export function shown(value: unknown): string {
  if (typeof value === 'string')
    return value.length > 60 ? `"${value.slice(0, 57)}..."` : `"${value}"`;
  if (typeof value === 'number' || typeof value === 'boolean' || value === null) return `${value}`;
  if (Array.isArray(value)) return 'a list';
  return isRecord(value) ? 'a record' : 'nothing';
}

const WORDS: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  tuple: 'a pair of longitude and latitude',
  object: 'a record',
  record: 'a record',
};

function typeProblem(value: unknown, expected: string): string {
  const wanted = expected.split(' or ').map((word) => WORDS[word] ?? word);
  return `${shown(value)} stands where ${wanted.join(' or ')} is wanted.`;
}

function typeRemedy(value: unknown): string {
  return typeof value === 'string' && /\d/.test(value)
    ? 'Write the number alone, in the unit that the field names: no quotes, commas or unit.'
    : 'Give a value of the wanted kind; see the JSON Schema of the campus file.';
}

function missingRemedy(issue: Issue): string {
  const mayBeUnknown = issue.path.at(-2) === 'facts';
  return mayBeUnknown ? 'Add it; write "unknown" where it was not observed.' : 'Add it.';
}

function unknownField(name: string, siblings: readonly string[]): ProblemText {
  const meant = nearest(name, siblings);
  const remedy = meant ? `Did you mean ${meant}?` : 'Remove it, or move it where it belongs.';
  return [`There is no field called ${name} here.`, remedy];
}

function choiceText(issue: Issue & { kind: 'choice' | 'no-such-kind' }): ProblemText {
  if (issue.kind === 'no-such-kind') {
    return ['The kind is none that is known.', 'See the JSON Schema of the campus file.'];
  }
  const [only, ...others] = issue.choices;
  const list = others.length === 0 ? shown(only) : `one of ${issue.choices.join(', ')}`;
  return [`${shown(issue.value)} is not ${list}.`, `Write ${list}.`];
}

function fiscalYearText(value: unknown): ProblemText {
  const year = /^(?:FY)?\s*'?(\d{4}|\d{2})$/i.exec(String(value))?.[1];
  const example = year === undefined ? '2028' : year.length === 2 ? `20${year}` : year;
  return [
    `${shown(value)} does not say whether a calendar year or a fiscal year is meant.`,
    `Write "FY${example}" for the fiscal year that ends in ${example}.`,
  ];
}

function idText(value: unknown): ProblemText {
  return [
    `${shown(value)} is not an identifier.`,
    'Use up to 60 letters, digits, dots, dashes and underscores, beginning with a letter or digit.',
  ];
}

function sizeText(issue: Issue & { kind: 'below' | 'above' }): [string, ProblemText] {
  const { kind, limit, of: what, value } = issue;
  const most = kind === 'below' ? 'at least' : 'at most';
  if (what === 'list') {
    const remedy = kind === 'below' ? 'Add what is missing.' : 'Take some out.';
    return [
      'LIST-LENGTH',
      [`The list must have ${most} ${counted(limit, 'entry', 'entries')}.`, remedy],
    ];
  }
  if (what === 'text') {
    const remedy = kind === 'below' ? 'Write what belongs there.' : 'Say it in fewer words.';
    return ['TEXT-LENGTH', [`The text must have ${most} ${counted(limit, 'character')}.`, remedy]];
  }
  if (kind === 'below' && limit === 0) {
    return ['VALUE-NEGATIVE', [`${shown(value)} is negative.`, 'Give 0 or more.']];
  }
  return [
    'VALUE-IMPOSSIBLE',
    [
      `${shown(value)} cannot be right: it must be ${most} ${limit}.`,
      'Check its digits, and that it is in the unit that the field is named by.',
    ],
  ];
}
