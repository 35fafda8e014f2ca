import type { Inline } from './inline.js';
import type { Fact } from './key-facts.js';

/**
 * A box set off from the text. `caution` marks what can hurt someone or break a rule,
 * `decision` what the reader is asked to decide, `note` anything else.
 * The title says in words what the frame says in line weight.
 */
export interface Callout {
  readonly kind: 'callout';
  readonly tone: CalloutTone;
  readonly title: string;
  readonly paragraphs: readonly Inline[];
}

export type CalloutTone = 'note' | 'caution' | 'decision';

/** Alternatives side by side, each with the same width and height. Two to four. */
export interface Options {
  readonly kind: 'options';
  readonly options: readonly Option[];
}

export interface Option {
  readonly title: string;
  readonly summary: Inline;
  readonly facts: readonly Fact[];
  readonly points: readonly Inline[];
}

/** Lines to sign by hand, kept together on one page. */
export interface Signatures {
  readonly kind: 'signatures';
  readonly statement: Inline;
  /** The role of each signer, such as "Grounds superintendent". */
  readonly signers: readonly string[];
}

export function callout(tone: CalloutTone, title: string, paragraphs: readonly Inline[]): Callout {
  return { kind: 'callout', tone, title, paragraphs };
}

/** A caution, titled as one: `caution('digging', ['Call the public one-call center ...'])`. */
export function caution(about: string, paragraphs: readonly Inline[]): Callout {
  return callout('caution', `Caution: ${about}`, paragraphs);
}

export function options(list: readonly Option[]): Options {
  return { kind: 'options', options: list };
}

export function signatures(statement: Inline, signers: readonly string[]): Signatures {
  return { kind: 'signatures', statement, signers };
}
