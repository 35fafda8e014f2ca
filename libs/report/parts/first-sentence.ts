/** The first sentence or clause of a remark, without its full stop; the rest stands with the plan. */
export function firstSentence(text: string): string {
  return (text.split(/(?<=[a-z0-9)])[.;] /)[0] ?? text).replace(/\.$/, '');
}
