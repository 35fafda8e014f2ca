/** Starts at which a spreadsheet takes a text for a formula, their full-width forms included. */
const FORMULA_START = /^'*[=+\-@\t\r\n＝＋－＠]/u;
const GUARDED = /^'+[=+\-@\t\r\n＝＋－＠]/u;

/** The text with an apostrophe before what a spreadsheet would run as a formula. */
export function guarded(text: string): string {
  return FORMULA_START.test(text) ? `'${text}` : text;
}

/** The way back from `guarded`; any other text stays as it is. */
export function unguarded(text: string): string {
  return GUARDED.test(text) ? text.slice(1) : text;
}
