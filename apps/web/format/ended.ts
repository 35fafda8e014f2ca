/** A text as a sentence: with a period, unless it ends with a mark of its own or is empty. */
export function ended(text: string): string {
  return text === '' || /[.!?]$/.test(text) ? text : `${text}.`;
}
