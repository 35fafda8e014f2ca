import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Problem } from '#domain/problem.js';
import { loadCampusFile } from '#planning/load-campus-file.js';

const FOLDER = 'seeds/mistakes';
const read = (name: string): string => readFileSync(`${FOLDER}/${name}`, 'utf8');
const names = readdirSync(FOLDER)
  .filter((file) => file.endsWith('.expected.json'))
  .map((file) => file.replace('.expected.json', ''));

type Told = Pick<Problem, 'code' | 'record' | 'field' | 'severity'>;

function problemsOf(text: string): readonly Problem[] {
  const load = loadCampusFile(text);
  return load.ok ? load.warnings : load.problems;
}

function told(problems: readonly Problem[]): Told[] {
  return problems
    .map(({ code, record, field, severity }) => ({ code, record, field, severity }))
    .sort((a, b) => (key(a) < key(b) ? -1 : 1));
}

function key({ code, record, field }: Told): string {
  return [code, record, field].join('|');
}

describe('A campus file with one planted mistake', () => {
  test('is made from a campus in which nothing is wrong', () => {
    expect(problemsOf(read('base.json'))).toEqual([]);
  });

  test('comes in many kinds, each with its expected problem', () => {
    const campuses = readdirSync(FOLDER).filter((f) => !f.endsWith('.expected.json'));
    expect(campuses.map((f) => f.replace('.json', '')).sort()).toEqual(['base', ...names].sort());
    expect(names.length).toBeGreaterThanOrEqual(31);
  });

  test.each(names)('%s', (name) => {
    const expected = JSON.parse(read(`${name}.expected.json`)) as Problem[];
    const load = loadCampusFile(read(`${name}.json`));
    const problems = load.ok ? load.warnings : load.problems;
    expect(told(problems)).toEqual(told(expected));
    expect(load.ok).toBe(!expected.some(({ severity }) => severity === 'error'));
    expect('campus' in load).toBe(load.ok);
    for (const { problem, remedy } of problems) {
      expect(problem).toMatch(/^[A-Z0-9"'-].*[.?]$/s);
      expect(remedy).toMatch(/^[A-Z].*[.?]$/s);
    }
  });

  const parseable = names.filter((name) => name !== 'a-comma-is-missing');
  test.each(parseable.filter((name) => !name.startsWith('twenty')))(
    '%s differs from the base in one place or two',
    (name) => {
      const base = JSON.parse(read('base.json')) as Record<string, unknown>;
      const changed = JSON.parse(read(`${name}.json`)) as Record<string, unknown>;
      const parts = Object.keys({ ...base, ...changed });
      const differing = parts.filter(
        (part) => JSON.stringify(base[part]) !== JSON.stringify(changed[part]),
      );
      expect(Object.keys(changed)).toEqual(Object.keys(base));
      expect(differing.length).toBeGreaterThanOrEqual(1);
      expect(differing.length).toBeLessThanOrEqual(2);
    },
  );

  test('reports twenty mistakes at once', () => {
    const problems = problemsOf(read('twenty-mistakes-at-once.json'));
    expect(new Set(told(problems).map(key)).size).toBe(20);
  });
});
