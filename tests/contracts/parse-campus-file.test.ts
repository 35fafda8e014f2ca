import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parsePlanFile } from '#contracts/plan-file.js';
import { parseCampusFile } from '#contracts/parse-campus-file.js';
import { isRecord } from '#contracts/reading/record-names.js';
import { hasErrors, type Problem } from '#domain/problem.js';
import { loadCampusFile } from '#planning/load-campus-file.js';

const text = readFileSync('seeds/mistakes/base.json', 'utf8');
const base = (): unknown => JSON.parse(text);

function problemsOf(input: unknown): readonly Problem[] {
  const load = loadCampusFile(input);
  return load.ok ? load.warnings : load.problems;
}

/** Every path of a document, to the leaves and to what holds them. */
function pathsOf(value: unknown, path: PropertyKey[] = []): PropertyKey[][] {
  const entries = Array.isArray(value)
    ? value.map((member, i) => [i, member] as const)
    : isRecord(value)
      ? Object.entries(value)
      : [];
  return [path, ...entries.flatMap(([key, member]) => pathsOf(member, [...path, key]))];
}

function withValueAt(path: readonly PropertyKey[], value: unknown): unknown {
  const document = { root: base() };
  let holder = document as unknown as Record<PropertyKey, unknown>;
  const keys = ['root', ...path];
  for (const key of keys.slice(0, -1)) holder = holder[key] as Record<PropertyKey, unknown>;
  holder[keys.at(-1) as string] = value;
  return document.root;
}

const ODD_VALUES: readonly unknown[] = [
  null,
  '',
  'unknown',
  'near',
  '__proto__',
  0,
  -1,
  1e300,
  0.1,
  2028,
  true,
  [],
  {},
  [[]],
  [null],
  'FY2028',
  'FY1900',
  '1901-01-01',
];

describe('Reading a campus file', () => {
  test('never throws on any JSON', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const load = loadCampusFile(JSON.stringify(value));
        expect(load.ok).toBe(false);
        parsePlanFile(value);
      }),
    );
  });

  test('never throws on any text', () => {
    fc.assert(
      fc.property(fc.string(), (value) => {
        expect(parseCampusFile(value).ok).toBe(false);
        parsePlanFile(value);
      }),
    );
  });

  test('never throws on a campus with an odd value anywhere, and never half-loads it', () => {
    const paths = pathsOf(base()).filter((path) => path.length > 0);
    fc.assert(
      fc.property(fc.constantFrom(...paths), fc.constantFrom(...ODD_VALUES), (path, odd) => {
        const load = loadCampusFile(withValueAt(path, odd));
        expect(load.ok).toBe(!hasErrors(load.ok ? load.warnings : load.problems));
      }),
      { numRuns: 400 },
    );
  });

  test('never throws on a campus with several odd values', () => {
    const paths = pathsOf(base()).filter((path) => path.length === 3 || path.length === 4);
    const edit = fc.tuple(fc.constantFrom(...paths), fc.constantFrom(...ODD_VALUES));
    fc.assert(
      fc.property(fc.array(edit, { minLength: 2, maxLength: 8 }), (edits) => {
        const document = base();
        for (const [path, odd] of edits) put(document, path, odd);
        expect(problemsOf(document)).toBeInstanceOf(Array);
      }),
      { numRuns: 100 },
    );
  });

  test('says the line and column of a slip', () => {
    const broken = text.replace('"horizonYears": 8,', '"horizonYears": 8;');
    const line = text.split('\n').findIndex((l) => l.includes('"horizonYears"')) + 1;
    const column = (text.split('\n')[line - 1] ?? '').indexOf(',') + 1;
    expect(problemsOf(broken).map(({ code, field }) => [code, field])).toEqual([
      ['FILE-NOT-JSON', `line ${line}, column ${column}`],
    ]);
  });

  test('agrees with the platform on what is JSON', () => {
    const snippet = fc.array(
      fc.constantFrom(
        '{',
        '}',
        '[',
        ']',
        ',',
        ':',
        '"a"',
        '1',
        '-0.5e3',
        'true',
        'null',
        ' ',
        '01',
        "'",
      ),
      { maxLength: 12 },
    );
    fc.assert(
      fc.property(snippet, (parts) => {
        const candidate = parts.join('');
        const load = parseCampusFile(candidate);
        const codes = load.ok ? [] : load.problems.map(({ code }) => code);
        expect(codes.includes('FILE-NOT-JSON')).toBe(!isJson(candidate));
      }),
      { numRuns: 2000 },
    );
  });

  test('reads a file that begins with a byte order mark', () => {
    expect(problemsOf(`\uFEFF${text}`)).toEqual([]);
  });

  test('suggests the name that was meant', () => {
    const document = base() as { candidateSites: { zone: string }[] };
    const [first] = document.candidateSites;
    if (first) first.zone = 'wset';
    expect(problemsOf(document).map(({ remedy }) => remedy)).toEqual(['Did you mean west?']);
    const misspelled = text.replace('"carryYears"', '"carryYear"');
    expect(problemsOf(misspelled).map(({ remedy }) => remedy)).toContain(
      'Did you mean carryYears?',
    );
  });
});

function put(document: unknown, path: readonly PropertyKey[], value: unknown): void {
  let holder = document as Record<PropertyKey, unknown>;
  for (const key of path.slice(0, -1)) {
    const next = holder[key];
    if (typeof next !== 'object' || next === null) return;
    holder = next as Record<PropertyKey, unknown>;
  }
  holder[path.at(-1) as string] = value;
}

function isJson(candidate: string): boolean {
  try {
    JSON.parse(candidate);
    return true;
  } catch {
    return false;
  }
}
