/** A stretch of text in one style. Left out: regular weight, upright. */
export interface Run {
  readonly text: string;
  readonly bold?: true;
  readonly italic?: true;
}

/** Text with or without changes of style. A line feed inside `text` starts a new line. */
export type Inline = string | readonly Run[];

/** Marks text as bold: `[{ text: 'Due ' }, bold('June 30')]`. */
export function bold(text: string): Run {
  return { text, bold: true };
}

/** Marks text as italic. */
export function italic(text: string): Run {
  return { text, italic: true };
}

/** The runs of an inline text; a plain string is one run. */
export function runsOf(inline: Inline): readonly Run[] {
  return typeof inline === 'string' ? [{ text: inline }] : inline;
}

/** The words of an inline text without their style. */
export function plainText(inline: Inline): string {
  return runsOf(inline)
    .map((run) => run.text)
    .join('');
}
