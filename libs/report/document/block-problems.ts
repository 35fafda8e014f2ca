import type { Options } from './boxes.js';
import type { Figure } from './figure.js';
import { plainText } from './inline.js';
import type { Block } from './plan-document.js';
import type { Table } from './table.js';

/** What is wrong with one block, one sentence each. */
export function blockProblems(block: Block): readonly string[] {
  switch (block.kind) {
    case 'heading':
      return missing(block.text, 'a heading has no text');
    case 'list':
      return block.items.length === 0 ? ['a list has no items'] : [];
    case 'key-facts':
      return block.facts.length === 0 ? ['a list of key facts is empty'] : [];
    case 'table':
      return tableProblems(block);
    case 'figure':
      return figureProblems(block);
    case 'callout':
      return missing(block.title, 'a callout has no title');
    case 'options':
      return optionProblems(block);
    case 'signatures':
      return block.signers.length === 0 ? ['a signature block has no signers'] : [];
    case 'paragraph':
      return missing(plainText(block.text), 'a paragraph has no text');
    case 'page-break':
      return [];
  }
}

function tableProblems(table: Table): readonly string[] {
  const name = `table "${table.caption}"`;
  const uneven = table.rows.findIndex((row) => row.cells.length !== table.columns.length);
  return [
    ...missing(table.caption, 'a table has no caption'),
    ...(table.columns.length === 0 ? [`${name} has no columns`] : []),
    ...(table.rows.length === 0 ? [`${name} has no rows; say so in a sentence instead`] : []),
    ...(uneven === -1 ? [] : [`${name}: row ${uneven + 1} has a wrong number of cells`]),
    ...table.columns.flatMap((column, index) => [
      ...missing(column.header, `${name}: column ${index + 1} has no header`),
      ...(column.weight > 0 ? [] : [`${name}: column ${index + 1} has no width`]),
    ]),
  ];
}

function figureProblems(figure: Figure): readonly string[] {
  const { width, height } = figure.drawing;
  return [
    ...missing(figure.title, 'a figure has no title'),
    ...missing(figure.alt, `figure "${figure.title}" has no text for those who cannot see it`),
    ...(width > 0 && height > 0 ? [] : [`figure "${figure.title}" has no size`]),
    ...tableProblems(figure.table),
  ];
}

function optionProblems({ options }: Options): readonly string[] {
  const count = options.length;
  return [
    ...(count < 2 || count > 4 ? [`options come in twos, threes or fours, not ${count}`] : []),
    ...options.flatMap((option) => missing(option.title, 'an option has no title')),
  ];
}

function missing(text: string, problem: string): readonly string[] {
  return text.trim() === '' ? [problem] : [];
}
