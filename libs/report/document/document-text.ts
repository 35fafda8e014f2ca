import { plainText, type Inline } from './inline.js';
import type { Block, PlanDocument } from './plan-document.js';
import type { Table } from './table.js';

/** Every word that a document prints or speaks, block by block, without style. */
export function documentText({ title, subject, blocks }: PlanDocument): string {
  return [title, subject, ...blocks.flatMap(blockTexts).map(plainText)].join('\n');
}

function blockTexts(block: Block): readonly Inline[] {
  switch (block.kind) {
    case 'heading':
    case 'paragraph':
      return [block.text];
    case 'list':
      return block.items;
    case 'key-facts':
      return block.facts.flatMap(({ label, value }) => [label, value]);
    case 'callout':
      return [block.title, ...block.paragraphs];
    case 'options':
      return block.options.flatMap(({ title, summary, facts, points }) => [
        title,
        summary,
        ...facts.flatMap(({ label, value }) => [label, value]),
        ...points,
      ]);
    case 'signatures':
      return [block.statement, ...block.signers];
    case 'table':
      return tableTexts(block);
    case 'figure':
      return [block.title, block.alt, ...tableTexts(block.table)];
    case 'page-break':
      return [];
  }
}

function tableTexts({ caption, columns, rows, note }: Table): readonly Inline[] {
  return [
    caption,
    ...columns.map(({ header }) => header),
    ...rows.flatMap(({ cells }) => cells),
    ...(note === undefined ? [] : [note]),
  ];
}
