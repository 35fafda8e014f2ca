import { blockProblems } from './block-problems.js';
import type { Block, PlanDocument } from './plan-document.js';

/**
 * What keeps a document from being printed and read by everyone, one sentence each; empty when
 * there is nothing. These are mistakes of the program that wrote the document, not of its user.
 */
export function documentProblems(document: PlanDocument): readonly string[] {
  return [
    ...emptyFields(document),
    ...dateProblems(document.createdAt),
    ...headingProblems(document.blocks),
    ...document.blocks.flatMap(blockProblems),
  ];
}

function emptyFields(document: PlanDocument): readonly string[] {
  const fields = ['title', 'subject', 'language', 'program', 'planVersion', 'dataDate'] as const;
  return fields
    .filter((field) => document[field].trim() === '')
    .map((field) => `the document's ${field} is empty`);
}

function dateProblems(createdAt: string): readonly string[] {
  return Number.isNaN(Date.parse(createdAt)) ? [`createdAt is not a date: "${createdAt}"`] : [];
}

function headingProblems(blocks: readonly Block[]): readonly string[] {
  const headings = blocks.filter((block) => block.kind === 'heading');
  return headings.flatMap(({ level, text }, index) => {
    const above = headings[index - 1]?.level ?? 0;
    return level > above + 1 ? [`heading "${text}" skips from level ${above} to ${level}`] : [];
  });
}
