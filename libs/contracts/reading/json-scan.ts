/** Where a JSON text breaks its grammar, and which keys an object gives twice. */
export interface JsonScan {
  /** Offset of the first character that does not belong. Left out: the text is JSON. */
  readonly brokenAt?: number;
  readonly twice: readonly { readonly key: string; readonly offset: number }[];
}

const SPACE = /[ \t\n\r]*/y;
const STRING = /"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/y;
const SCALAR = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null/y;

type Wanted = 'value' | 'value-or-end' | 'key' | 'key-or-end' | 'comma-or-end' | 'nothing';

/** An open array, or an open object with the keys seen in it. */
type Level = 'array' | Set<string>;

/**
 * Scans a text by the JSON grammar (RFC 8259) with a stack of its own, so that neither depth nor the
 * wording of a JavaScript engine's error matters.
 */
export function scanJson(text: string): JsonScan {
  const twice: { key: string; offset: number }[] = [];
  const levels: Level[] = [];
  let wanted: Wanted = 'value';
  let at = 0;

  const take = (pattern: RegExp): string | undefined => {
    pattern.lastIndex = at;
    const found = pattern.exec(text)?.[0];
    if (found !== undefined) at += found.length;
    return found;
  };
  const afterValue = (): Wanted => (levels.length === 0 ? 'nothing' : 'comma-or-end');

  const key = (level: Set<string>): Wanted | undefined => {
    const offset = at;
    const name = take(STRING);
    take(SPACE);
    if (name === undefined || text[at] !== ':') return undefined;
    at += 1;
    if (level.has(name)) twice.push({ key: name.slice(1, -1), offset });
    level.add(name);
    return 'value';
  };
  const open = (level: Level): Wanted => {
    at += 1;
    levels.push(level);
    return level === 'array' ? 'value-or-end' : 'key-or-end';
  };
  const value = (): Wanted | undefined => {
    if (text[at] === '[') return open('array');
    if (text[at] === '{') return open(new Set());
    return (take(STRING) ?? take(SCALAR)) === undefined ? undefined : afterValue();
  };
  const next = (): Wanted | undefined => {
    const level = levels.at(-1);
    const closing = level === 'array' ? ']' : '}';
    if (level && wanted.endsWith('-or-end') && text[at] === closing) {
      at += 1;
      levels.pop();
      return afterValue();
    }
    if (wanted === 'comma-or-end') {
      if (text[at] !== ',') return undefined;
      at += 1;
      return level === 'array' ? 'value' : 'key';
    }
    if (wanted.startsWith('key')) return level instanceof Set ? key(level) : undefined;
    return wanted === 'nothing' ? undefined : value();
  };

  for (;;) {
    take(SPACE);
    if (at >= text.length && wanted === 'nothing') return { twice };
    const then = next();
    if (then === undefined) return { brokenAt: at, twice };
    wanted = then;
  }
}

/** Line and column of an offset, both from 1. */
export function lineAndColumn(text: string, offset: number): { line: number; column: number } {
  const before = text.slice(0, offset).split('\n');
  return { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
}
