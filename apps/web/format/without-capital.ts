/** A text as it goes on within a sentence: its first letter small, unless it is a name such as TVU-14 or FY28. */
export function withoutCapital(text: string): string {
  return /^\p{Lu}\p{Ll}/u.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}
