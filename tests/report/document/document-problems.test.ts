import { expect, test } from 'vitest';
import { options } from '#report/document/boxes.js';
import { documentProblems } from '#report/document/document-problems.js';
import type { Block } from '#report/document/plan-document.js';
import { numberColumn, row, table, textColumn } from '#report/document/table.js';
import { heading, list, paragraph } from '#report/document/text-blocks.js';
import { documentOf, sampleBlocks } from '../../support/sample-document.js';
import { careFigure, sampleFigures } from '../../support/sample-figures.js';

const problems = (...blocks: Block[]) => documentProblems(documentOf(blocks));
const columns = [textColumn('Site'), numberColumn('Hours')];

test('the sample document has no problems', () => {
  expect(problems(...sampleBlocks, ...sampleFigures)).toEqual([]);
});

test('a skipped heading level is named, a step back is not', () => {
  expect(problems(heading(1, 'A'), heading(3, 'B'))).toEqual([
    'heading "B" skips from level 1 to 3',
  ]);
  expect(problems(heading(2, 'A'))).toEqual(['heading "A" skips from level 0 to 2']);
  expect(problems(heading(1, 'A'), heading(2, 'B'), heading(1, 'C'))).toEqual([]);
});

test('an uneven row is named', () => {
  const uneven = table({ caption: 'Care', columns, rows: [row('a', '1'), row('b')] });
  expect(problems(uneven)).toEqual(['table "Care": row 2 has a wrong number of cells']);
});

test('an empty table, list or paragraph is named', () => {
  expect(
    problems(table({ caption: 'Care', columns, rows: [] }), list('bullet', []), paragraph('')),
  ).toHaveLength(3);
});

test('a figure needs words', () => {
  expect(problems({ ...careFigure, alt: ' ' })).toEqual([
    'figure "Summer care hours against summer supply" has no text for those who cannot see it',
  ]);
});

test('options come in twos, threes or fours', () => {
  const option = { title: 'A', summary: '', facts: [], points: [] };
  expect(problems(options([option]))).toEqual(['options come in twos, threes or fours, not 1']);
});

test('empty fields and a date that is none are named', () => {
  const document = documentOf([], { program: '', createdAt: 'soon' });
  expect(documentProblems(document)).toEqual([
    "the document's program is empty",
    'createdAt is not a date: "soon"',
  ]);
});
