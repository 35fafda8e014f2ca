/** The page's English stands in its strings file: a part that draws holds no words of its own. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';

/** Attributes whose text a person reads or hears. */
const SPOKEN = new Set([
  'aria-label',
  'aria-description',
  'aria-roledescription',
  'title',
  'alt',
  'placeholder',
]);

function wordsIn(path: string, text: string): string[] {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const note = (text: string): void => {
    if (/[a-z]{2,}/i.test(text)) found.push(`${path}: ${text.trim()}`);
  };
  const look = (node: ts.Node): void => {
    if (ts.isJsxText(node)) note(node.text);
    if (ts.isJsxAttribute(node) && SPOKEN.has(node.name.getText()) && node.initializer) {
      if (ts.isStringLiteral(node.initializer)) note(node.initializer.text);
    }
    ts.forEachChild(node, look);
  };
  look(source);
  return found;
}

test('the check finds words in a part, and in what is read out', () => {
  const part = '<p title="Not here">Nor here <b className="quiet">{words.here}</b></p>';
  expect(wordsIn('example.tsx', part)).toEqual(['example.tsx: Not here', 'example.tsx: Nor here']);
});

test('no part of the page holds words of its own', () => {
  const files = readdirSync('apps/web', { recursive: true, encoding: 'utf8' });
  const parts = files.filter((path) => path.endsWith('.tsx')).map((path) => join('apps/web', path));
  expect(parts.length).toBeGreaterThan(60);
  expect(parts.flatMap((path) => wordsIn(path, readFileSync(path, 'utf8')))).toEqual([]);
});
