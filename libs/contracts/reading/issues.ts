import type { z } from 'zod';
import { DATE_MESSAGE, FISCAL_YEAR_MESSAGE } from '../campus-file/values.js';
import { valueAt, type Path } from './record-names.js';

/** One thing that the schema found, in a form that can be put into words. */
export type Issue = { readonly path: Path; readonly value: unknown } & (
  | { readonly kind: 'missing' }
  | { readonly kind: 'type'; readonly expected: string }
  | { readonly kind: 'whole' }
  | { readonly kind: 'unknown-field'; readonly name: string }
  | { readonly kind: 'choice'; readonly choices: readonly string[] }
  | { readonly kind: 'no-such-kind' }
  | { readonly kind: 'fiscal-year' }
  | { readonly kind: 'date' }
  | { readonly kind: 'id' }
  | { readonly kind: 'key' }
  | { readonly kind: 'below' | 'above'; readonly limit: number; readonly of: SizeOf }
);

/** What is too small or too large. */
export type SizeOf = 'number' | 'list' | 'text';

type ZodIssue = z.core.$ZodIssue;

/** Issues of a parse, unions resolved to the alternative that the value was meant for. */
export function issuesOf(error: z.ZodError, document: unknown): Issue[] {
  return error.issues.flatMap((issue) => issueOf(issue, { document, base: [] }));
}

interface At {
  readonly document: unknown;
  /** Path to the union whose alternative the issue belongs to. */
  readonly base: Path;
}

function issueOf(issue: ZodIssue, at: At): Issue[] {
  const path = [...at.base, ...issue.path];
  const value = valueAt(at.document, path);
  const here = { path, value };
  if (value === undefined && issue.code !== 'unrecognized_keys') {
    return [{ ...here, kind: 'missing' }];
  }
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((name) => ({
        path: [...path, name],
        value: valueAt(at.document, [...path, name]),
        kind: 'unknown-field',
        name,
      }));
    case 'invalid_union':
      return unionIssues(issue, { document: at.document, base: path });
    case 'invalid_value':
      return [{ ...here, kind: 'choice', choices: issue.values.map(String) }];
    case 'invalid_key':
      return [{ ...here, kind: 'key' }];
    case 'too_small':
      return [{ ...here, kind: 'below', limit: Number(issue.minimum), of: sizeOf(issue.origin) }];
    case 'too_big':
      return [{ ...here, kind: 'above', limit: Number(issue.maximum), of: sizeOf(issue.origin) }];
    default:
      return [{ ...here, ...textIssue(issue) }];
  }
}

function textIssue(issue: ZodIssue): { kind: 'fiscal-year' | 'date' | 'id' | 'whole' } | TypeIssue {
  if (issue.message === FISCAL_YEAR_MESSAGE) return { kind: 'fiscal-year' };
  if (issue.message === DATE_MESSAGE) return { kind: 'date' };
  if (issue.code === 'invalid_format') return { kind: 'id' };
  if (issue.code !== 'invalid_type') return { kind: 'type', expected: 'another value' };
  return issue.expected === 'int' ? { kind: 'whole' } : { kind: 'type', expected: issue.expected };
}

interface TypeIssue {
  readonly kind: 'type';
  readonly expected: string;
}

/** The alternative whose own type fits the value; where none does, what all of them would take. */
function unionIssues(issue: ZodIssue & { code: 'invalid_union' }, at: At): Issue[] {
  const value = valueAt(at.document, at.base);
  if (issue.errors.length === 0) return [{ path: at.base, value, kind: 'no-such-kind' }];
  const alternatives = issue.errors.map((issues) => issues.flatMap((i) => issueOf(i, at)));
  const meant = alternatives.find((issues) => !issues.some((i) => isAboutType(i, at.base)));
  if (meant) return meant;
  const choices = alternatives.flat().flatMap((i) => (i.kind === 'choice' ? i.choices : []));
  const types = alternatives.flat().flatMap((i) => (i.kind === 'type' ? [i.expected] : []));
  const wanted = [...types, ...choices.map((c) => `"${c}"`)].join(' or ');
  return [{ path: at.base, value, kind: 'type', expected: wanted }];
}

function isAboutType(issue: Issue, base: Path): boolean {
  return (
    issue.path.length === base.length && ['type', 'choice', 'fiscal-year'].includes(issue.kind)
  );
}

function sizeOf(origin: string): SizeOf {
  if (origin === 'array' || origin === 'set') return 'list';
  return origin === 'string' ? 'text' : 'number';
}
