/** What a page draws and how it is marked, read from its content stream operator by operator. */
export interface PageMarks {
  /** Operators that paint outside any marked content. */
  readonly unmarked: readonly string[];
  /** Marked content begun inside other marked content. */
  readonly nested: readonly string[];
  /** Numbers of the tagged content, in drawing order. */
  readonly mcids: readonly number[];
  /** Types of the artifacts. */
  readonly artifacts: readonly string[];
  /** Whether every mark that is begun is ended. */
  readonly balanced: boolean;
  /** Glyph numbers shown, as four hexadecimal digits. */
  readonly glyphs: ReadonlySet<string>;
}

const PAINTING = /(?:^|\s)(?:S|s|f\*?|F|B\*?|b\*?|sh|Do|Tj|TJ|'|")$/;

/** Reads a content stream that has one operator to a line. */
export function pageMarks(content: string): PageMarks {
  const unmarked: string[] = [];
  const nested: string[] = [];
  const mcids: number[] = [];
  const artifacts: string[] = [];
  const glyphs = new Set<string>();
  let depth = 0;
  for (const operator of operators(content)) {
    if (/B[DM]C$/.test(operator)) {
      if (depth > 0) nested.push(operator);
      depth += 1;
      const mcid = /\/MCID (\d+)/.exec(operator)?.[1];
      if (mcid !== undefined) mcids.push(Number(mcid));
      if (operator.startsWith('/Artifact')) {
        artifacts.push(/\/Type \/(\w+)/.exec(operator)?.[1] ?? 'none');
      }
    } else if (operator === 'EMC') depth -= 1;
    else if (PAINTING.test(operator) && depth === 0) unmarked.push(operator);
    if (/T[jJ]$/.test(operator)) glyphsOf(operator).forEach((glyph) => glyphs.add(glyph));
  }
  return { unmarked, nested, mcids, artifacts, balanced: depth === 0, glyphs };
}

/** Joins a dictionary that runs over several lines to its operator. */
function operators(content: string): readonly string[] {
  return content
    .replace(/<<[^]*?>>/g, (found) => found.replace(/\s+/g, ' '))
    .split('\n')
    .map((text) => text.trim())
    .filter((text) => text !== '');
}

function glyphsOf(operator: string): readonly string[] {
  return [...operator.matchAll(/<([0-9a-fA-F]+)>/g)].flatMap(
    ([, hex]) => hex!.match(/.{4}/g) ?? [],
  );
}
