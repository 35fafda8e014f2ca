import { existsSync, readFileSync } from 'node:fs';

/** A `ts` block of a guide. */
export interface DocBlock {
  /** `README.md:12`, the line of its first line of code. */
  readonly place: string;
  readonly code: string;
  /** Whether it is to be run too, as a block that opens with `ts run` is. */
  readonly runs: boolean;
}

const FENCED = /^```ts( run)?\n([\s\S]*?)^```$/gm;

/** The `ts` blocks of a Markdown file of the project, in order; none where it does not exist. */
export function docBlocks(file: string): readonly DocBlock[] {
  return existsSync(file) ? blocksOf(file, readFileSync(file, 'utf8')) : [];
}

export function blocksOf(file: string, text: string): readonly DocBlock[] {
  return [...text.matchAll(FENCED)].map((match) => ({
    place: `${file}:${text.slice(0, match.index).split('\n').length + 1}`,
    code: match[2] ?? '',
    runs: match[1] !== undefined,
  }));
}
